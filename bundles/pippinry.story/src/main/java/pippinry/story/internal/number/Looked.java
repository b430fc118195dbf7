package pippinry.story.internal.number;

import java.util.List;
import java.util.Optional;
import pippinry.model.record.Kind;

/** What looking for a number came to. */
public sealed interface Looked {

    /**
     * @param kind empty for a place
     * @param key under which it is filed
     * @param by how it was found when it was not by its number, such as {@code old tag}; else empty
     */
    record Found(Optional<Kind<?>> kind, String key, String by) implements Looked {}

    /** Several have this name. */
    record Several(String name, List<String> keys) implements Looked {}

    /**
     * @param because in words, such as that the check character does not fit
     * @param nearest numbers on file that may be meant, the nearest first
     */
    record Missing(String typed, String because, List<String> nearest) implements Looked {}
}
