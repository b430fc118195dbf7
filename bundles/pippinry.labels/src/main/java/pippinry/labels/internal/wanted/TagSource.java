package pippinry.labels.internal.wanted;

/** One kind of tag: for which records, and what stands on it. */
interface TagSource {
    WantedTags wanted(Wish wish);
}
