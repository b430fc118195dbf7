package pippinry.traits;

/** A named note or state of a trait: its code as it is written down, and what it means. */
public record TraitState(String code, String meaning) {}
