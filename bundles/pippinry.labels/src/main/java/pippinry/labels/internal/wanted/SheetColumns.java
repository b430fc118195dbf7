package pippinry.labels.internal.wanted;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.labels.internal.score.ScoreColumn;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.OwnTrait;
import pippinry.model.value.Code;
import pippinry.traits.CropPack;
import pippinry.traits.TraitDefinition;
import pippinry.traits.TraitState;

/** The columns of a sheet: traits of the crop's pack or of the person's own, and counts. */
public final class SheetColumns {
    private static final Map<String, String> COUNTS = Map.of(
            "emasculated", "flowers",
            "bagged", "bags",
            "pollinated", "flowers",
            "bag_off", "bags",
            "set", "fruits",
            "june", "fruits",
            "harvest", "fruits",
            "lost", "fruits",
            "emerged", "in all",
            "potted", "pots");

    private final Program program;
    private final Optional<CropPack> pack;

    /** The pack of the program's crop is taken; without it only the person's own traits are known. */
    public SheetColumns(Program program, List<CropPack> packs) {
        this.program = program;
        this.pack = packs.stream()
                .filter(pack -> program.setting("crop").map(pack.crop()::equals).orElse(packs.size() == 1))
                .findFirst();
    }

    /** Columns for these codes; {@link IllegalArgumentException} names one that is not known, and what is. */
    public List<ScoreColumn> of(SheetKind kind, List<String> codes) {
        List<ScoreColumn> columns = new ArrayList<>();
        for (String code : codes) {
            columns.add(kind.isScored() ? trait(code) : count(code));
        }
        return columns;
    }

    private static ScoreColumn count(String code) {
        String hint = Optional.ofNullable(COUNTS.get(code))
                .orElseThrow(() -> new IllegalArgumentException("'" + code + "' is not counted; counted are "
                        + COUNTS.keySet().stream().sorted().collect(Collectors.joining(", "))));
        return new ScoreColumn(code, code.replace('_', ' '), hint, List.of());
    }

    private ScoreColumn trait(String code) {
        return trait(code, SheetColumns::own, SheetColumns::published);
    }

    /** What is made of the trait with this code: the person's own comes first, then that of the crop's pack. */
    public <V> V trait(String code, Function<OwnTrait, V> own, Function<TraitDefinition, V> published) {
        return program.find(Kinds.TRAITS, Code.<OwnTrait>of(code))
                .map(own)
                .or(() -> pack.flatMap(of -> of.trait(code)).map(published))
                .orElseThrow(() -> unknown(code));
    }

    private IllegalArgumentException unknown(String code) {
        String known = Stream.concat(
                        program.table(Kinds.TRAITS).stream()
                                .map(own -> own.code().text()),
                        pack.stream().flatMap(of -> of.traits().stream()).map(TraitDefinition::code))
                .distinct()
                .collect(Collectors.joining(", "));
        return new IllegalArgumentException("There is no trait '" + code + "'. "
                + (pack.isEmpty() ? "No crop pack is here for this program's crop. " : "")
                + (known.isEmpty() ? "No trait of your own is on file" : "Traits are " + known));
    }

    private static ScoreColumn own(OwnTrait trait) {
        List<String> legend =
                trait.states().isBlank() ? List.of() : List.of(trait.states().split("\\|"));
        String title = trait.name().isBlank() ? trait.code().text() : trait.name();
        return new ScoreColumn(trait.code().text(), title, ownHint(trait), legend);
    }

    private static String ownHint(OwnTrait trait) {
        if (!trait.unit().isBlank()) {
            return trait.unit();
        }
        return trait.low().isPresent() && trait.high().isPresent()
                ? span(plain(trait.low().getAsDouble()), plain(trait.high().getAsDouble()))
                : "";
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    private static ScoreColumn published(TraitDefinition trait) {
        List<String> legend = new ArrayList<>();
        legend.add(Stream.of(trait.when(), trait.how())
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining("; ")));
        trait.states().forEach(state -> legend.add(state.code() + "  " + state.meaning()));
        legend.add(Stream.of(trait.standard(), trait.provenance().words())
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining("; ")));
        legend.removeIf(String::isBlank);
        return new ScoreColumn(trait.code(), trait.name(), hint(trait), legend);
    }

    private static String hint(TraitDefinition trait) {
        return switch (trait.scale()) {
            case NUMBER -> trait.unit();
            case COUNT -> trait.unit().isBlank() ? "count" : trait.unit();
            case DAY -> "date";
            case NOTE, STATE -> states(trait.states());
        };
    }

    private static String states(List<TraitState> states) {
        return states.isEmpty()
                ? ""
                : span(states.get(0).code(), states.get(states.size() - 1).code());
    }

    private static String span(String from, String to) {
        return from + " – " + to;
    }
}
