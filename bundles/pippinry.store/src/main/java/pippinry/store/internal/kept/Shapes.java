package pippinry.store.internal.kept;

import java.util.stream.Collectors;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** The tables and their columns as this version knows them. */
final class Shapes {

    private Shapes() {}

    static String[] all() {
        return Kinds.ALL.stream().map(Shapes::of).toArray(String[]::new);
    }

    private static String of(Kind<?> kind) {
        return kind.table() + ":" + kind.columns().stream().map(Column::name).collect(Collectors.joining(","));
    }
}
