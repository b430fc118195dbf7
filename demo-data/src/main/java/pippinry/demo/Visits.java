package pippinry.demo;

import java.time.LocalDate;

/** The list of visits to a tagged branch, and of what was lost between them. */
final class Visits {

    private final Holding holding;
    private final Book book;

    Visits(Holding holding) {
        this.holding = holding;
        this.book = holding.book();
    }

    /** One visit; the notebooks do not tell hour and weather. */
    void add(Bough bough, LocalDate day, int hour, String did, int count, String lot) {
        boolean timed = !book.fromNotebooks();
        int minute = Dice.of(bough.tag(), did).whole(0, 5) * 10;
        book.add(book.row(Table.VISITS)
                .with("pollination", bough.tag())
                .with("time", timed ? day.atTime(hour, minute) : book.day(day, bough.tag()))
                .with("did", did)
                .with("count", count)
                .with("pollen_lot", lot)
                .with("hand", Dice.of("hand", bough.tag()).chance(0.7) ? "IN" : "OD")
                .with("weather", timed ? holding.weather().note(day) : ""));
    }

    void lose(String subject, LocalDate day, int number, String cause) {
        if (number > 0) {
            book.add(book.row(Table.LOSSES)
                    .with("subject", subject)
                    .with("date", book.day(day, subject, cause))
                    .with("number", number)
                    .with("cause", cause));
        }
    }
}
