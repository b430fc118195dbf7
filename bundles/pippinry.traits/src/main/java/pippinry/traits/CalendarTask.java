package pippinry.traits;

/**
 * Work of the breeder's year.
 *
 * @param programYear counted from the cross, which is year 0
 * @param fromMonth first month, northern hemisphere
 * @param toMonth last month
 * @param fromMonthSouth first month, southern hemisphere
 * @param wrong what goes wrong
 */
public record CalendarTask(
        int programYear,
        int fromMonth,
        int toMonth,
        int fromMonthSouth,
        int toMonthSouth,
        String subject,
        String task,
        String record,
        String wrong,
        String decision,
        Provenance provenance) {

    public CalendarTask {
        for (int month : new int[] {fromMonth, toMonth, fromMonthSouth, toMonthSouth}) {
            if (month < 1 || month > 12) {
                throw new IllegalArgumentException("months from 1 to 12");
            }
        }
    }
}
