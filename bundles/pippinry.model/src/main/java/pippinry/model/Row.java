package pippinry.model;

/**
 * A record in its place in a program.
 *
 * @param id the place within its kind, never used again
 */
public record Row<T extends Record>(int id, T value) {}
