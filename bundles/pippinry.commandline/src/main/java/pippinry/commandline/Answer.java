package pippinry.commandline;

import java.util.Map;

/**
 * What a subcommand has to say: as values for {@code --json}, and in words.
 *
 * @param json keys to strings, numbers, booleans, lists, maps or null, in their order; doubles keep full precision
 * @param words for a person, lines parted by a line feed, may be empty
 * @param yes whether the answer is yes or the work is done; no gives exit code 1
 */
public record Answer(Map<String, ?> json, String words, boolean yes) {

    public static Answer of(Map<String, ?> json, String words) {
        return new Answer(json, words, true);
    }

    public static Answer no(Map<String, ?> json, String words) {
        return new Answer(json, words, false);
    }
}
