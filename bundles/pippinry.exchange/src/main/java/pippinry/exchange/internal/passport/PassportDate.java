package pippinry.exchange.internal.passport;

import pippinry.model.value.PartialDate;

/** Dates as passports write them: YYYYMMDD, hyphens for what is not known. */
final class PassportDate {

    private PassportDate() {}

    static String of(PartialDate date) {
        return "%04d".formatted(date.year().getValue())
                + date.month()
                        .map(month -> "%02d".formatted(month.getMonthValue()))
                        .orElse("--")
                + date.day().map(day -> "%02d".formatted(day.getDayOfMonth())).orElse("--");
    }
}
