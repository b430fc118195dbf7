package pippinry.model.record;

import java.util.function.Function;

/**
 * How a value stands in a cell of a plain table. An empty cell means not known.
 *
 * @param read throws IllegalArgumentException whose message says what was expected
 * @param write gives the empty text for what is not known
 */
record Cell<V>(Function<String, V> read, Function<V, String> write) {}
