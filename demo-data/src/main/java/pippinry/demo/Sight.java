package pippinry.demo;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/**
 * What two people see and write. A reading is the tree's worth plus the season, its spot, the scorer's habit and chance;
 * it is rounded to the scale. What is written is also remembered, for the choices are made on it and not on the truth.
 */
final class Sight {

    private static final Map<Trait, Double> HABIT_OF_OD =
            Map.of(Trait.SCAB, 0.4, Trait.MILDEW, 0.2, Trait.LIKING, 0.5, Trait.AROMA, -0.4, Trait.VIGOUR, 0.3);

    private final Holding holding;
    private final Book book;
    private final Map<String, Impression> impressions = new HashMap<>();

    Sight(Holding holding) {
        this.holding = holding;
        this.book = holding.book();
    }

    /** The habit of a scorer on a trait, in its unit; part of the truth. */
    static double habit(String scorer, Trait trait) {
        return scorer.equals("OD") ? HABIT_OF_OD.getOrDefault(trait, 0.0) : 0;
    }

    /** A reading before rounding. */
    double reading(Tree tree, Trait trait, int year, String scorer) {
        double error = trait.environmentSd() * StrictMath.sqrt(2 / 3.0);
        return tree.truly().worth(trait)
                + season(trait, year)
                + tree.spot(trait)
                + habit(scorer, trait)
                + Dice.of("reading", tree.tag(), trait, year, scorer).normal(0, error);
    }

    /** The effect of a season on a trait, in its unit; part of the truth. Scab goes with the weather. */
    double season(Trait trait, int year) {
        return switch (trait) {
            case SCAB -> 0.9 * holding.seasons().scabPressure(year) - 0.3;
            case HARVEST -> Dice.of("harvest season", year).normal(0, 3);
            // A wet hillside is no place for mildew.
            case MILDEW -> Dice.of("season", trait, year).normal(-1.3, 0.4);
            case BLOOM, STORE, PRECOCITY -> 0;
            default -> Dice.of("season", trait, year).normal(0, 0.4 * trait.geneticSd());
        };
    }

    /** Scab on leaves, 1 to 9. A tree with the resistance stays nearly clean whatever the season. */
    int scab(Tree tree, int year, String scorer) {
        double seen = tree.truly().genome().has(Locus.RVI6)
                ? 1 + StrictMath.abs(Dice.of("escape", tree.tag(), year).normal(0, 0.5))
                : reading(tree, Trait.SCAB, year, scorer);
        return note(seen);
    }

    int potScab(Tree tree, int year) {
        return scab(tree, year, "OD");
    }

    int potMildew(Tree tree, int year) {
        return note(reading(tree, Trait.MILDEW, year, "OD"));
    }

    static int note(double seen) {
        return (int) Math.max(1, Math.min(9, Math.round(seen)));
    }

    void write(String subject, String trait, String value, String unit, LocalDate day) {
        write(subject, trait, value, unit, day, "OD", "");
    }

    void write(String subject, String trait, String value, String unit, LocalDate day, String scorer, String sample) {
        book.add(book.row(Table.SCORES)
                .with("subject", subject)
                .with("trait", trait)
                .with("value", value)
                .with("unit", unit)
                .with("date", book.day(day, subject, trait))
                .with("scorer", scorer)
                .with("sample", sample)
                .with("instrument", instrument(trait)));
    }

    private static String instrument(String trait) {
        return switch (trait) {
            case "flesh.firmness_n" -> "11.1 mm plunger";
            case "juice.ssc_brix" -> "refractometer, corrected to 20 °C";
            case "juice.ta_gl" -> "titrated to pH 8.1";
            default -> "";
        };
    }

    /** A score from a paper sheet that was carried along the row. */
    void writeFromSheet(String sheet, String subject, String trait, String value, LocalDate day, String scorer) {
        book.add(book.row(Table.SCORES)
                .with("subject", subject)
                .with("trait", trait)
                .with("value", value)
                .with("date", book.day(day, subject, trait))
                .with("scorer", scorer)
                .with("sheet", sheet));
    }

    Impression of(Genotype labelled) {
        return impressions.computeIfAbsent(labelled.code(), any -> new Impression());
    }

    void decide(Genotype labelled, String decision, String grounds, LocalDate day) {
        book.add(book.row(Table.DECISIONS)
                .with("genotype", labelled)
                .with("decision", decision)
                .with("date", book.day(day, decision, labelled))
                .with("person", Dice.of("person", labelled, decision).one("IN", "OD"))
                .with("grounds", grounds));
        of(labelled).decided(decision);
    }
}
