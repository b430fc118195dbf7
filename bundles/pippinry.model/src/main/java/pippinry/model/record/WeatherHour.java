package pippinry.model.record;

import java.util.OptionalDouble;
import pippinry.model.value.PartialDate;

/** One hour of weather; the time is the start of the hour, local without summer time. */
public record WeatherHour(
        @Needed PartialDate time,
        OptionalDouble tempC,
        OptionalDouble wetMin,
        OptionalDouble rainMm,
        OptionalDouble rhPct) {

    public WeatherHour {
        Checks.range("temp_c", tempC, -60, 60);
        Checks.range("wet_min", wetMin, 0, 60);
        Checks.range("rain_mm", rainMm, 0, 500);
        Checks.range("rh_pct", rhPct, 0, 100);
    }
}
