package pippinry.model.value;

/** What a score, name, note or loss is about: the code of a record of any kind, or a place as {@code block/row/place}. */
public record Subject(String text) {

    public Subject {
        if (!Code.isTidy(text)) {
            throw new IllegalArgumentException("the code of a record on file");
        }
    }

    public static Subject of(Code<?> code) {
        return new Subject(code.text());
    }

    @Override
    public String toString() {
        return text;
    }
}
