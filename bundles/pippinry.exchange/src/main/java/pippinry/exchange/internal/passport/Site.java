package pippinry.exchange.internal.passport;

import java.util.Optional;
import pippinry.model.Program;

/** Where the land lies, as the program's settings have it; all of it shows a stranger the way. */
record Site(String latitude, String longitude, String uncertainty, String method, String altitude) {

    private static final String DATUM = "WGS84";

    /** Empty unless both coordinates are set. */
    static Optional<Site> of(Program program) {
        Optional<String> latitude = program.setting("latitude");
        Optional<String> longitude = program.setting("longitude");
        return latitude.isEmpty() || longitude.isEmpty()
                ? Optional.empty()
                : Optional.of(new Site(
                        latitude.get(),
                        longitude.get(),
                        program.setting("coordinate_uncertainty_m").orElse(""),
                        program.setting("coordinate_method").orElse(""),
                        program.setting("altitude_m").orElse("")));
    }

    void write(Passport passport) {
        passport.put(Field.DECLATITUDE, latitude)
                .put(Field.DECLONGITUDE, longitude)
                .put(Field.COORDUNCERT, uncertainty)
                .put(Field.COORDDATUM, DATUM)
                .put(Field.GEOREFMETH, method)
                .put(Field.ELEVATION, altitude);
    }
}
