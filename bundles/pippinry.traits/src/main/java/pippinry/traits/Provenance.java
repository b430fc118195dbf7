package pippinry.traits;

/**
 * Where a fact comes from; it is shown wherever the fact is.
 *
 * @param source author and title, or where to verify it; empty for common practice
 */
public record Provenance(Basis basis, String source) {
    public Provenance {
        if (source.isBlank() && basis != Basis.COMMON_PRACTICE) {
            throw new IllegalArgumentException("a source, since the basis is '" + basis.word() + "'");
        }
    }

    /** Both in words, as they stand beside a figure. */
    public String words() {
        return source.isEmpty() ? basis.word() : basis.word() + ": " + source;
    }
}
