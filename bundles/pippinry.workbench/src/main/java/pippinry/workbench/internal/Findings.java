package pippinry.workbench.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import pippinry.model.Program;
import pippinry.model.record.FurtherName;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;

/** Finds numbers and names, also old tags and nicknames, by what a person types. */
public final class Findings {

    private static final int MOST = 60;

    /**
     * Something found.
     *
     * @param number what gets selected
     * @param words how it reads in the list
     */
    public record Finding(String number, String words) {}

    private final List<Finding> all = new ArrayList<>();

    private Findings(Program program) {
        program.table(Kinds.GENOTYPES).stream().map(Findings::of).forEach(all::add);
        program.table(Kinds.NAMES).stream().map(Findings::of).forEach(all::add);
        program.table(Kinds.PLANTS).stream()
                .map(plant -> new Finding(plant.tag().text(), plant.tag() + "  plant"))
                .forEach(all::add);
        program.table(Kinds.CROSSES).stream()
                .map(cross -> new Finding(
                        cross.code().text(),
                        cross.code() + "  cross "
                                + cross.seedParent().map(Object::toString).orElse("unknown") + " × "
                                + cross.pollenParent()))
                .forEach(all::add);
        program.table(Kinds.POLLINATIONS).stream()
                .map(tag -> new Finding(tag.tag().text(), tag.tag() + "  pollination"))
                .forEach(all::add);
        program.table(Kinds.SEEDLOTS).stream()
                .map(lot -> new Finding(lot.code().text(), lot.code() + "  seed lot"))
                .forEach(all::add);
    }

    public static Findings in(Program program) {
        return program.derived(Findings.class, Findings::new);
    }

    /** The closest first: those that begin with the words typed, then those that hold them. */
    public List<Finding> by(String typed) {
        String wanted = plain(typed);
        if (wanted.isEmpty()) {
            return List.of();
        }
        return all.stream()
                .filter(finding -> plain(finding.words).contains(wanted))
                .sorted(Comparator.comparing(
                                (Finding finding) -> !plain(finding.words).startsWith(wanted))
                        .thenComparing(finding -> finding.words.length())
                        .thenComparing(Finding::words))
                .limit(MOST)
                .toList();
    }

    private static Finding of(Genotype genotype) {
        String code = genotype.code().text();
        return new Finding(code, genotype.name().isEmpty() ? code : code + "  " + genotype.name());
    }

    private static Finding of(FurtherName name) {
        String kind = name.kind().isEmpty() ? "also called" : name.kind();
        return new Finding(name.subject().text(), name.name() + "  " + kind + ", now " + name.subject());
    }

    /** Hyphens, blanks and case do not count: 26014073 finds 26-014-073. */
    private static String plain(String text) {
        return text.replaceAll("[-\\s=]", "").toLowerCase(Locale.ROOT);
    }
}
