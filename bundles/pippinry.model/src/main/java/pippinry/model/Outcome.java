package pippinry.model;

import java.util.List;

/** The program after an edit, and what the edit came to. */
public record Outcome(Program program, List<Settled<?>> changes) {}
