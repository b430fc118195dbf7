package pippinry.labels.internal.wanted;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;

/** What is said of a record in the small text of a tag. Words that belong together are kept on one line. */
final class Phrases {
    private static final char TOGETHER = '\u00a0';

    /** Stays at the end of a line, never at its start. */
    private static final String DOT = TOGETHER + "· ";

    private final Program program;

    Phrases(Program program) {
        this.program = program;
    }

    /** The name of a genotype, or its code where it has none. */
    String name(Code<Genotype> code) {
        return program.find(Kinds.GENOTYPES, code)
                .map(Genotype::name)
                .filter(name -> !name.isBlank())
                .orElse(code.text());
    }

    /** {@code ♀ Golden Delicious × ♂ Prima}; nothing when neither parent is known. */
    String parents(Optional<Code<Genotype>> seed, PollenParent<Genotype> pollen) {
        if (seed.isEmpty() && pollen.candidates().isEmpty()) {
            return "";
        }
        String mother = joined("♀ ") + seed.map(this::name).orElse("unknown");
        return switch (pollen.how()) {
            case OPEN -> mother + ", open pollinated";
            case SELF -> mother + ", selfed";
            case UNKNOWN -> mother + " × unknown";
            case KNOWN, CANDIDATES -> mother + joined(" ×") + " " + joined("♂ ") + fathers(pollen);
        };
    }

    private String fathers(PollenParent<Genotype> pollen) {
        return pollen.candidates().stream().map(this::name).collect(Collectors.joining(" or "));
    }

    String parents(Cross cross) {
        return parents(cross.seedParent(), cross.pollenParent());
    }

    String parentsOfCross(Optional<Code<Cross>> cross) {
        return cross.flatMap(code -> program.find(Kinds.CROSSES, code))
                .map(this::parents)
                .orElse("");
    }

    /** {@code row 7, place 9}. */
    static String place(Occupancy place) {
        String row = place.row().isBlank() ? "" : joined("row " + place.row());
        String spot = place.place().isBlank() ? "" : joined("place " + place.place());
        return joined(place.block().map(Code::text).orElse("")) + separated(row, DOT) + separated(spot, ", ");
    }

    private static String separated(String text, String before) {
        return text.isEmpty() ? "" : before + text;
    }

    static String year(Optional<PartialDate> date) {
        return date.map(known -> (known.about() ? "about " : "") + known.year()).orElse("");
    }

    /** The text with its blanks made unbreakable. */
    static String joined(String text) {
        return text.replace(' ', TOGETHER);
    }

    /** Those that are not empty, with a middle dot between. */
    static String row(String... parts) {
        return Arrays.stream(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(DOT));
    }
}
