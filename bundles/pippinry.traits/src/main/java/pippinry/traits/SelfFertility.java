package pippinry.traits;

/**
 * A cultivar known to set with its own pollen, against the rule.
 *
 * @param degree full or partly
 * @param condition under which; empty if always
 */
public record SelfFertility(String cultivar, String degree, String condition, Provenance provenance, String note) {}
