package pippinry.demo;

import java.time.LocalDate;

/** Seed that is of no cross of ours: from bought fruit, a gift, bees, or a branch whose cross is not known. */
final class OtherSeed {

    private final Holding holding;
    private final Book book;

    OtherSeed(Holding holding) {
        this.holding = holding;
        this.book = holding.book();
    }

    /** @param fruits 0 if seed came without fruit */
    void keep(String code, String source, LocalDate day, int fruits, int seeds) {
        book.add(book.row(Table.SEEDLOTS)
                .with("code", code)
                .with("source", source)
                .with("harvested_on", book.day(day, code))
                .with("fruits", fruits > 0 ? fruits : "")
                .with("seeds_full", seeds)
                .with("kept", "dry, paper bag"));
    }

    void year(int year) {
        switch (year) {
            case 2013 -> bought();
            case 2022 -> keep("L22-GIFT", "gift: open seed of Discovery", LocalDate.of(2022, 11, 1), 0, 40);
            case 2025 ->
                keep(
                        "L25-OP",
                        "open pollinated, "
                                + holding.families()
                                        .get("20-012")
                                        .seedlings()
                                        .get(0)
                                        .seedParent()
                                        .orElseThrow(),
                        LocalDate.of(2025, 10, 5),
                        6,
                        31);
            default -> {}
        }
    }

    /** Pips of bought Braeburn, raised as seedling stocks and never numbered. */
    private void bought() {
        LocalDate day = LocalDate.of(2013, 11, 20);
        keep("L13-BOUGHT", "bought fruit: Braeburn", day, 4, 22);
        book.change(
                Table.SEEDLOTS,
                "L13-BOUGHT",
                "sown_on",
                book.day(LocalDate.of(2014, 3, 10), "L13-BOUGHT"),
                "sown",
                22,
                "emerged",
                13,
                "potted",
                11,
                "note",
                "raised as seedling stocks, not numbered");
        new Visits(holding).lose("L13-BOUGHT", LocalDate.of(2014, 6, 1), 9, "did not come up");
    }
}
