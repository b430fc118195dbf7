package pippinry.demo;

import java.time.LocalDate;
import java.util.List;

/** Everything that is not a tree: goals, own traits, names, wood that came and went, hours, frost and hail. */
final class Upkeep {

    private final Holding holding;
    private final Book book;

    Upkeep(Holding holding) {
        this.holding = holding;
        this.book = holding.book();
    }

    void goals() {
        goal("scab_leaf", "must", "less", 2.0, null, "clean here beside infected checks");
        goal("scab_fruit", "must", "less", 2.0, null, "");
        goal("mildew", "must", "less", 3.0, null, "");
        goal("store.weeks", "must", "more", 20.0, null, "keeps until March from a cellar at 3 °C");
        goal("time.harvest", "must", "less", 288.0, null, "ripe by mid October");
        goal("fruit.over_hue", "wish", "near", 2.0, 1.0, "pink blush");
        goal("fruit.over_area", "wish", "more", null, 0.5, "");
        goal("sense.aroma", "wish", "more", null, 2.0, "");
        goal("like.flavour", "wish", "more", null, 3.0, "");
        goal("fruit.weight_g", "wish", "near", 150.0, 0.5, "fits a hand");
    }

    private void goal(String trait, String kind, String direction, Double threshold, Double weight, String note) {
        book.add(book.row(Table.GOALS)
                .with("trait", trait)
                .with("kind", kind)
                .with("direction", direction)
                .with("threshold", threshold)
                .with("weight", weight)
                .with("note", note));
    }

    void ownTraits() {
        book.add(book.row(Table.TRAITS)
                .with("code", "stool.liners")
                .with("name", "Rooted shoots stripped from a stool")
                .with("scale", "count")
                .with("low", 0)
                .with("high", 40)
                .with("unit", "liners")
                .with("direction", "more"));
    }

    void name(String subject, String name, String kind, String from, String note) {
        book.add(book.row(Table.NAMES)
                .with("subject", subject)
                .with("name", name)
                .with("kind", kind)
                .with("from", from)
                .with("note", note));
    }

    void move(LocalDate day, String subject, String what, String direction, String person, String amount, String note) {
        book.add(book.row(Table.MOVES)
                .with("date", book.day(day, subject, what))
                .with("subject", subject)
                .with("what", what)
                .with("direction", direction)
                .with("person", person)
                .with("amount", amount)
                .with("may_pass_on", direction.equals("in") ? "yes" : "no")
                .with("protected", List.of("CRPA").contains(subject) ? "yes" : "no")
                .with("health_test", direction.equals("in") ? "none" : "")
                .with("note", note));
    }

    void care(LocalDate day, String where, String what, double hours, Double cost, String note) {
        book.add(book.row(Table.CARE)
                .with("date", book.day(day, where, what))
                .with("where", where)
                .with("what", what)
                .with("hours", hours)
                .with("cost", cost)
                .with("note", note));
    }

    void event(LocalDate day, String where, String kind, Double lowest, String harm) {
        book.add(book.row(Table.EVENTS)
                .with("date", book.day(day, where, kind))
                .with("where", where)
                .with("kind", kind)
                .with("lowest_c", lowest)
                .with("harm", harm));
    }

    void task(String batch, LocalDate day, String text) {
        book.add(book.row(Table.TASKS).with("batch", batch).with("date", day).with("text", text));
    }

    /** Marks what the program would find due as done. */
    void done(String batch, String rule, LocalDate due, LocalDate done, String text) {
        book.add(book.row(Table.TASKS)
                .with("batch", batch)
                .with("date", due)
                .with("text", text)
                .with("rule", rule)
                .with("outcome", "done")
                .with("done_on", done)
                .with("person", "OD"));
    }

    void note(String subject, LocalDate day, String text) {
        book.add(book.row(Table.NOTES)
                .with("subject", subject)
                .with("date", book.day(day, subject, text))
                .with("text", text));
    }

    void cost(String batch, LocalDate day, String text, double amount) {
        book.add(book.row(Table.COSTS)
                .with("batch", batch)
                .with("date", book.day(day, batch, text))
                .with("text", text)
                .with("amount", amount));
    }

    /** The round of the year in the field: winter pruning, mulch, summer watering of young rows, nets at harvest. */
    void year(int year) {
        care(LocalDate.of(year, 2, 20), "PAR", "pruning", 6.0, null, "");
        care(LocalDate.of(year, 4, 14), "A", "mulching", 9.0, 60.0, "straw");
        care(LocalDate.of(year, 6, 12), year < 2020 ? "A" : "C", "watering", 5.0, null, "young rows only");
        care(LocalDate.of(year, 8, 24), "B", "summer pruning", 7.0, null, "");
        cost("trees", LocalDate.of(year, 3, 3), "stakes, ties and compost", 85 + 5.0 * (year - 2011));
        frost(year);
        mishap(year);
    }

    private void mishap(int year) {
        switch (year) {
            case 2014 -> event(LocalDate.of(2014, 1, 25), "A", "browsing", null, "a hare barked two young trees");
            case 2016 ->
                event(
                        LocalDate.of(2016, 11, 20),
                        "OLD",
                        "storm",
                        null,
                        "one limb of the old tree split and was braced");
            case 2018 -> event(LocalDate.of(2018, 7, 10), "A", "drought", null, "young trees wilted, some died");
            case 2021 -> event(LocalDate.of(2021, 6, 27), "all", "hail", null, "a third of the fruitlets marked");
            case 2022 ->
                event(
                        LocalDate.of(2022, 6, 9),
                        "A",
                        "drift",
                        null,
                        "a neighbour's spray drifted over rows 1 and 2: their clean leaves prove nothing");
            case 2024 ->
                event(LocalDate.of(2024, 4, 15), "C", "browsing", null, "a deer took the tips of six young trees");
            default -> {}
        }
    }

    private void frost(int year) {
        for (LocalDate day = LocalDate.of(year, 5, 1); day.getMonthValue() == 5; day = day.plusDays(1)) {
            double lowest = holding.weather().lowest(day);
            if (lowest < -1.2) {
                event(
                        day,
                        "all",
                        "frost",
                        lowest,
                        lowest < -2.5
                                ? "open flowers brown, most set lost"
                                : lowest < -1.8 ? "about a third of open flowers brown" : "none seen");
            }
        }
    }
}
