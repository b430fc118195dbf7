package pippinry.traits;

/** A short warning that belongs where the work is planned; it defers to local rules and licensed people. */
public record Caution(String topic, String text, Provenance provenance) {}
