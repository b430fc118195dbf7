package pippinry.nursery.internal.start;

import java.util.Locale;
import java.util.Optional;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Genotype;
import pippinry.model.record.GenotypeKind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;

/** The seed parent as a person names it: by number or name of one on file, or a new name, or not at all. */
public final class Mother {

    private static final int LETTERS = 6;
    private static final String FALLBACK = "MOTHER";

    private final Program program;

    public Mother(Program program) {
        this.program = program;
    }

    /** The one on file that is meant; empty if nothing is typed or it is none of those. */
    public Optional<Code<Genotype>> onFile(String typed) {
        String wanted = typed.strip();
        return program.table(Kinds.GENOTYPES).stream()
                .filter(genotype -> genotype.code().text().equalsIgnoreCase(wanted)
                        || (!wanted.isEmpty() && genotype.name().equalsIgnoreCase(wanted)))
                .findFirst()
                .map(Genotype::code)
                .or(() -> byFurtherName(wanted));
    }

    private Optional<Code<Genotype>> byFurtherName(String wanted) {
        return program.table(Kinds.NAMES).stream()
                .filter(name -> name.name().equalsIgnoreCase(wanted))
                .map(name -> name.subject().text())
                .filter(code -> program.table(Kinds.GENOTYPES).find(code).isPresent())
                .findFirst()
                .map(Code::of);
    }

    /** The one that is meant, put on file by the edit if it is new; empty if nothing is typed. */
    public Optional<Code<Genotype>> in(Edit.Draft edit, String typed, String origin) {
        String name = typed.strip();
        if (name.isEmpty() || name.equalsIgnoreCase("unknown")) {
            return Optional.empty();
        }
        return onFile(name).or(() -> Optional.of(added(edit, name, origin)));
    }

    private Code<Genotype> added(Edit.Draft edit, String name, String origin) {
        Code<Genotype> code = Code.of(freeCode(name));
        edit.put(
                Kinds.GENOTYPES,
                new Genotype(
                        code,
                        name,
                        program.setting("crop").orElse(""),
                        Optional.of(GenotypeKind.CULTIVAR),
                        java.util.OptionalInt.empty(),
                        Optional.empty(),
                        PollenParent.unknown(),
                        Optional.empty(),
                        Optional.empty(),
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        origin,
                        ""));
        return code;
    }

    /** The first letters of the name, with a digit where they are taken or would have a star. */
    private String freeCode(String name) {
        String letters = name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
        String stem = letters.isEmpty() ? FALLBACK : letters.substring(0, Math.min(LETTERS, letters.length()));
        String code = stem;
        for (int serial = 2; isTaken(code); serial++) {
            code = stem + serial;
        }
        return code;
    }

    private boolean isTaken(String code) {
        return CheckCharacter.of(code) == CheckCharacter.STAR
                || program.table(Kinds.GENOTYPES).find(code).isPresent();
    }
}
