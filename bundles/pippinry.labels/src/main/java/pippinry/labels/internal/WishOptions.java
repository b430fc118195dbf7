package pippinry.labels.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Option;
import pippinry.commandline.CallRefused;
import pippinry.labels.internal.wanted.TagKind;
import pippinry.labels.internal.wanted.Wish;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates;
import pippinry.model.number.Reading;

/** For which records tags are printed. */
final class WishOptions {
    @Option(
            names = "--for",
            paramLabel = "KIND",
            description = "pollinations, neutral, fruitbags, seedlots, pots, bundles, grafts, plants, trees or rows.")
    String kind;

    @Option(
            names = "--year",
            paramLabel = "YEAR",
            description = "Year of the crosses, harvest or grafts (default: this year).")
    Integer year;

    @Option(names = "--cross", paramLabel = "CROSS", description = "Only of this cross, such as 26-014.")
    String cross;

    @Option(names = "--block", paramLabel = "BLOCK", description = "Only in this block.")
    String block;

    @Option(names = "--row", paramLabel = "ROW", description = "Only in this row.")
    String row;

    @Option(
            names = "--number",
            paramLabel = "NUMBER",
            split = ",",
            description = "Only these numbers, with or without their check; year and state do not matter then.")
    List<String> numbers = List.of();

    @Option(names = "--waiting", description = "Only those whose tag was never noted as printed (see --record).")
    boolean waiting;

    @Option(names = "--count", paramLabel = "N", defaultValue = "0", description = "How many neutral tags.")
    int count;

    @Option(
            names = "--flowers-per-tag",
            paramLabel = "N",
            defaultValue = "20",
            description = "Flowers of one tagged branch, where a planned cross has no branch on file yet.")
    int flowersPerTag;

    /** True when it is said what the tags are for. */
    boolean names() {
        return kind != null;
    }

    TagKind kind() throws CallRefused {
        if (kind == null) {
            throw new CallRefused("What are the tags for? --for takes one of " + TagKind.words());
        }
        TagKind known = TagKind.of(kind)
                .orElseThrow(() -> new CallRefused("--for " + kind + ": expected one of " + TagKind.words()));
        requireCount(known);
        return known;
    }

    private void requireCount(TagKind known) throws CallRefused {
        boolean counted = known == TagKind.NEUTRAL && numbers.isEmpty();
        if (counted && (count < 1 || count > 2000)) {
            throw new CallRefused("--for neutral needs --count N, from 1 to 2000");
        }
        if (flowersPerTag < 1) {
            throw new CallRefused("--flowers-per-tag " + flowersPerTag + ": expected 1 or more");
        }
    }

    Wish wish(Program program, LocalDate today, Optional<HouseRates> rates) throws CallRefused {
        return new Wish(
                program,
                today,
                year == null ? OptionalInt.empty() : OptionalInt.of(year),
                Optional.ofNullable(cross),
                Optional.ofNullable(block),
                Optional.ofNullable(row),
                checkedNumbers(),
                waiting,
                count,
                flowersPerTag,
                rates);
    }

    private List<String> checkedNumbers() throws CallRefused {
        List<String> checked = new ArrayList<>();
        for (String typed : numbers) {
            checked.add(typed.contains("=") ? checked(typed) : typed.strip());
        }
        return checked;
    }

    private static String checked(String typed) throws CallRefused {
        try {
            Reading reading = Reading.of(typed);
            if (reading.isValid()) {
                return reading.number();
            }
            throw new CallRefused("--number " + typed + ": the check is wrong; read the tag again");
        } catch (IllegalArgumentException e) {
            throw new CallRefused("--number " + typed + ": expected " + e.getMessage());
        }
    }
}
