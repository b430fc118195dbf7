package pippinry.model.record;

import pippinry.model.value.Code;

/** Something about the program itself: its name, crop, hemisphere, first names of the hands. */
public record Setting(@Needed Code<Setting> key, String value) {}
