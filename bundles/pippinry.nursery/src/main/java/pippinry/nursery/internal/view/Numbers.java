package pippinry.nursery.internal.view;

/** Reads numbers that a person typed into a field. */
final class Numbers {

    private Numbers() {}

    /** @throws IllegalArgumentException that names the question and what was typed */
    static int whole(String typed, String question) {
        try {
            return Integer.parseInt(typed.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(question + ": '" + typed + "' where a whole number is expected", e);
        }
    }
}
