package pippinry.season.internal.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import pippinry.model.Program;
import pippinry.panels.Chapter;
import pippinry.panels.Page;
import pippinry.season.internal.due.Words;

/**
 * The season book before it is set: what every chapter wrote about a program on a day. The same program and day make the
 * same book.
 *
 * @param name of the program
 * @param day on which it was looked at, in words
 * @param failed chapters that could not be written, with the reason
 */
public record Book(String name, String day, List<Section> sections, List<String> failed) {

    /** Chapters stand by their order, then by title; one that has nothing to say is left out. */
    public static Book of(Program program, LocalDate today, List<Chapter> chapters) {
        List<Section> sections = new ArrayList<>();
        List<String> failed = new ArrayList<>();
        List<Chapter> ordered = chapters.stream()
                .sorted(Comparator.comparingInt(Chapter::order).thenComparing(Chapter::title))
                .toList();
        for (Chapter chapter : ordered) {
            WrittenPage page = new WrittenPage();
            try {
                chapter.write(program, today, page);
                if (!page.blocks().isEmpty()) {
                    sections.add(new Section(chapter.title(), page.blocks()));
                }
            } catch (RuntimeException e) {
                // One module's mistake must not cost the person the whole book; they are told.
                failed.add(chapter.title() + ": " + e);
            }
        }
        return new Book(program.setting("name").orElse("Program"), Words.date(today), sections, failed);
    }

    /** A few pages about one thing, without a title page. */
    public static Book sheet(String name, String day, String title, Consumer<Page> writing) {
        WrittenPage page = new WrittenPage();
        writing.accept(page);
        return new Book(name, day, List.of(new Section(title, page.blocks())), List.of());
    }

    public String title() {
        return name + " season book";
    }

    public List<String> chapters() {
        return sections.stream().map(Section::title).toList();
    }
}
