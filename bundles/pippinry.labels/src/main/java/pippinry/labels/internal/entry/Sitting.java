package pippinry.labels.internal.entry;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import pippinry.labels.internal.entry.Writing.Hand;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.value.ScoreValue;

/**
 * Types in a sheet, line by line in the order of the paper. Each row is an edit of its own, on disk before the next is asked
 * for; the history keeps what was entered first when it is corrected later.
 */
public final class Sitting {

    /** What a line did. */
    public enum Did {
        ENTERED,
        BLANK,
        WENT,
        ASKED,
        REFUSED,
        TAKEN_BACK,
        STOPPED
    }

    /** @param words for the person; may be empty */
    public record Reply(Did did, String words) {}

    private record Entered(int row, long edit, String words, int seen, int notSeen) {}

    private record Asked(int row, String values) {}

    private final Filing filing;
    private final PaperRows paper;
    private final Writing writing;
    private final Hand hand;
    private final String author;
    private final Deque<Entered> entered = new ArrayDeque<>();
    private Optional<Asked> asked = Optional.empty();
    private int row;
    private boolean stopped;
    private int blank;
    private int questions;

    /** @param day on which the sheet was filled in */
    public Sitting(Filing filing, PaperRows paper, LocalDate day, String author) {
        this.filing = filing;
        this.paper = paper;
        this.writing = paper.writing();
        this.hand = new Hand(paper.sheet().sheet().text(), day, author);
        this.author = author;
    }

    /** The row that is asked for, counted from 0; the number of rows after the last. */
    public int row() {
        return row;
    }

    /** Goes to a row, counted from 0. */
    public void goTo(int next) {
        row = Math.max(0, Math.min(next, paper.lines().size()));
        asked = Optional.empty();
    }

    public boolean isOver() {
        return stopped || row >= paper.lines().size();
    }

    /** A value waits to be repeated. */
    public boolean isAsking() {
        return asked.isPresent();
    }

    /** What was entered last, in words; empty before the first. */
    public String last() {
        return entered.isEmpty() ? "" : entered.peek().words();
    }

    public int entered() {
        return entered.stream().mapToInt(Entered::seen).sum();
    }

    public int notSeen() {
        return entered.stream().mapToInt(Entered::notSeen).sum();
    }

    /** Boxes walked past and left blank. */
    public int blank() {
        return blank;
    }

    public int questions() {
        return questions;
    }

    /** What this sheet holds in a row already; a blank box is empty. */
    public List<Optional<ScoreValue>> known(int at) {
        return paper.boxes().stream()
                .map(box ->
                        writing.known(filing.now(), hand, paper.lines().get(at).number(), box.code()))
                .toList();
    }

    /**
     * Takes one line: values from left to right, parted by blanks, tabs or semicolons, {@code -} for a blank box; nothing for a
     * blank row; a number of the sheet before them, or alone to go there; {@code back}; {@code .} or {@code stop}.
     */
    public Reply take(String typed) {
        String line = typed.strip();
        if (line.equals(".") || line.equalsIgnoreCase("stop")) {
            stopped = true;
            return new Reply(Did.STOPPED, "");
        }
        if (line.equalsIgnoreCase("back")) {
            return takeBack();
        }
        try {
            return line.isEmpty() ? leaveBlank() : row(line, typed);
        } catch (NotTaken e) {
            asked = Optional.empty();
            return new Reply(Did.REFUSED, e.getMessage());
        }
    }

    /** The same with the boxes of a row apart; boxes that are all empty leave the row blank. */
    public Reply enter(String number, List<String> cells) {
        try {
            int at = paper.row(number).orElseThrow(() -> new NotTaken(number + " is not on this sheet"));
            List<String> tidy = cells.stream().map(String::strip).toList();
            if (tidy.stream().allMatch(String::isEmpty)) {
                goTo(at);
                return leaveBlank();
            }
            return values(at, tidy);
        } catch (NotTaken e) {
            asked = Optional.empty();
            return new Reply(Did.REFUSED, e.getMessage());
        }
    }

    private Reply leaveBlank() {
        blank += paper.boxes().size();
        goTo(row + 1);
        return new Reply(Did.BLANK, "");
    }

    private Reply row(String line, String typed) throws NotTaken {
        String[] parts = line.split("[\\s;]", 2);
        Optional<Integer> named = paper.row(parts[0]);
        if (named.isPresent() && parts.length == 1) {
            goTo(named.get());
            return new Reply(Did.WENT, "");
        }
        int at = named.orElse(row);
        String rest = named.isPresent() ? parts[1] : typed;
        return values(at, split(rest));
    }

    private List<String> split(String values) throws NotTaken {
        int boxes = paper.boxes().size();
        String[] cells = values.matches("(?s).*[\\t;].*")
                ? values.split("[\\t;]", -1)
                : boxes == 1 ? new String[] {values} : values.strip().split("\\s+");
        List<String> tidy =
                new ArrayList<>(Arrays.stream(cells).map(String::strip).toList());
        if (tidy.size() > boxes) {
            throw new NotTaken(tidy.size() + " values where " + boxes + " are expected: "
                    + String.join(", ", paper.sheet().traitList()));
        }
        return tidy;
    }

    private Reply values(int at, List<String> cells) throws NotTaken {
        Program program = filing.now();
        String subject = paper.lines().get(at).number();
        List<Box> boxes = new ArrayList<>();
        List<ScoreValue> values = new ArrayList<>();
        List<String> odd = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty() && !cells.get(i).equals("-")) {
                Box box = paper.boxes().get(i);
                Box.Typed typed = box.read(cells.get(i));
                boxes.add(box);
                values.add(typed.value());
                typed.question().ifPresent(odd::add);
                writing.question(program, hand, subject, box.code(), typed.value())
                        .ifPresent(odd::add);
                writing.known(program, hand, subject, box.code())
                        .filter(there -> !there.equals(typed.value()))
                        .ifPresent(there -> odd.add(box.code() + " of " + subject + " holds " + there));
            }
        }
        Asked now = new Asked(at, String.join("\t", cells));
        if (!odd.isEmpty() && !asked.equals(Optional.of(now))) {
            row = at;
            asked = Optional.of(now);
            questions++;
            return new Reply(Did.ASKED, String.join("; ", odd) + ". Type it once more if it is meant");
        }
        return file(at, subject, boxes, values);
    }

    private Reply file(int at, String subject, List<Box> boxes, List<ScoreValue> values) throws NotTaken {
        String words = subject + " " + words(boxes, values);
        if (!boxes.isEmpty()) {
            Edit.Draft edit = Edit.by(author, "sheet " + hand.sheet() + " row " + (at + 1) + ": " + words);
            writing.putRow(edit, filing.now(), hand, subject, boxes, values);
            try {
                int notSeen = (int) values.stream().filter(ScoreValue::notSeen).count();
                long number = filing.file(edit.done());
                entered.push(new Entered(at, number, words, values.size() - notSeen, notSeen));
            } catch (EditRefused e) {
                throw new NotTaken(e.getMessage());
            }
        }
        blank += paper.boxes().size() - boxes.size();
        goTo(at + 1);
        return new Reply(Did.ENTERED, words);
    }

    private static String words(List<Box> boxes, List<ScoreValue> values) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            words.add(boxes.get(i).code() + " " + values.get(i)
                    + (boxes.get(i).unit().isBlank() || values.get(i).notSeen()
                            ? ""
                            : " " + boxes.get(i).unit()));
        }
        return String.join(", ", words);
    }

    private Reply takeBack() {
        if (entered.isEmpty()) {
            return new Reply(Did.REFUSED, "Nothing was entered in this sitting yet");
        }
        Entered last = entered.peek();
        try {
            filing.takeBack(last.edit());
        } catch (EditRefused e) {
            return new Reply(Did.REFUSED, e.getMessage());
        }
        entered.pop();
        goTo(last.row());
        return new Reply(Did.TAKEN_BACK, "Taken back: " + last.words());
    }
}
