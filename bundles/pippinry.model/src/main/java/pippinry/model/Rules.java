package pippinry.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Column;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;

/**
 * What holds in every program: a key stands for one record, every code names a record on file, nobody descends from
 * itself, and no number's check character is a star.
 */
final class Rules {

    private final Program program;
    private final List<Fault> faults = new ArrayList<>();

    Rules(Program program) {
        this.program = program;
    }

    /** Checks what these changes touched; the program is the one after them. */
    List<Fault> check(List<Settled<?>> changes) {
        for (int i = 0; i < changes.size(); i++) {
            check(i, changes.get(i));
        }
        return faults;
    }

    List<Fault> checkAll() {
        Kinds.ALL.forEach(this::checkTable);
        return faults;
    }

    private <T extends Record> void checkTable(Kind<T> kind) {
        program.table(kind).forEach(row -> checkRow(-1, kind, row));
    }

    private <T extends Record> void check(int number, Settled<T> change) {
        Kind<T> kind = change.kind();
        // A later change of the same edit may have the last word on this row.
        program.table(kind)
                .get(change.id())
                .filter(now -> change.after().equals(Optional.of(now)))
                .ifPresent(now -> checkRow(number, kind, new Row<>(change.id(), now)));
        Optional<String> gone = change.before()
                .flatMap(kind::keyOf)
                .filter(key -> program.table(kind).find(key).isEmpty());
        gone.ifPresent(key -> checkNobodyCites(number, kind, key));
    }

    private <T extends Record> void checkRow(int number, Kind<T> kind, Row<T> row) {
        String key = kind.keyOf(row.value()).orElse("row " + row.id());
        if (!kind.key().isEmpty() && program.table(kind).find(key).map(Row::id).orElse(-1) != row.id()) {
            faults.add(new Fault(number, kind.table(), key, kind.key().get(0).name(), key, "this is on file already"));
        }
        for (Column column : kind.columns()) {
            checkBlanks(number, kind, key, column, row.value());
            for (String code : kind.cited(row.value(), column)) {
                checkCited(number, kind, key, column, code);
            }
        }
        checkNumber(number, kind, key);
        if (row.value() instanceof Genotype genotype) {
            checkDescent(number, genotype);
        }
    }

    /** Nobody sees a blank around a name, yet it would make two of one. */
    private <T extends Record> void checkBlanks(int number, Kind<T> kind, String key, Column column, T row) {
        if (column.isText() && (column.needed() || kind.key().contains(column))) {
            String text = kind.cell(row, column);
            if (!text.equals(text.strip())) {
                faults.add(new Fault(number, kind.table(), key, column.name(), text, "blanks stand around it"));
            }
        }
    }

    private void checkCited(int number, Kind<?> kind, String key, Column column, String code) {
        if (!onFile(column, code)) {
            String what = column.cites().map(Kinds::of).map(Kind::table).orElse("any table");
            faults.add(new Fault(
                    number, kind.table(), key, column.name(), code, "nothing with this code is on file in " + what));
        }
    }

    private boolean onFile(Column column, String code) {
        return column.cites().isPresent()
                ? program.table(Kinds.of(column.cites().get())).find(code).isPresent()
                : Subjects.isOnFile(program, code);
    }

    private void checkNobodyCites(int number, Kind<?> gone, String key) {
        for (Kind<?> kind : Kinds.ALL) {
            citing(kind, gone, key)
                    .ifPresent(who -> faults.add(new Fault(
                            number, gone.table(), key, "", "", kind.table() + " " + who + " still speaks of it")));
        }
    }

    private <T extends Record> Optional<String> citing(Kind<T> kind, Kind<?> gone, String key) {
        return program.table(kind).citing(key).stream()
                .filter(row ->
                        kind.columns().stream().anyMatch(column -> speaksOf(kind, row.value(), column, gone, key)))
                .findFirst()
                .map(row -> kind.keyOf(row.value()).orElse("row " + row.id()));
    }

    private <T extends Record> boolean speaksOf(Kind<T> kind, T row, Column column, Kind<?> gone, String key) {
        boolean named = column.cites().isPresent()
                ? column.cites().get() == gone.type()
                : column.namesSubject() && !Subjects.isOnFile(program, key);
        return named && kind.cited(row, column).contains(key);
    }

    /** A person's own code may have any letters; only one that the check character can be reckoned for is tested. */
    private void checkNumber(int number, Kind<?> kind, String key) {
        boolean numbered = kind == Kinds.GENOTYPES || kind == Kinds.PLANTS || kind == Kinds.POLLINATIONS;
        if (numbered && CheckCharacter.isReckonable(key) && CheckCharacter.of(key) == CheckCharacter.STAR) {
            String reason = "its check character would be *, which cannot be written on a tag; "
                    + CheckCharacter.suggestion(key)
                            .map(other -> "take " + other + " instead")
                            .orElse("take another");
            faults.add(new Fault(number, kind.table(), key, kind.key().get(0).name(), key, reason));
        }
    }

    /** Walks up from the genotype; the walk ends at founders, so it costs as much as there are ancestors. */
    private void checkDescent(int number, Genotype start) {
        Set<Code<Genotype>> seen = new HashSet<>();
        List<Code<Genotype>> open = new ArrayList<>(parents(start));
        while (!open.isEmpty()) {
            Code<Genotype> code = open.remove(open.size() - 1);
            if (code.equals(start.code())) {
                faults.add(new Fault(
                        number,
                        "genotypes",
                        code.text(),
                        "seed_parent",
                        start.seedParent().map(Code::text).orElse(""),
                        "it would descend from itself"));
                return;
            }
            if (seen.add(code)) {
                program.find(Kinds.GENOTYPES, code).ifPresent(parent -> open.addAll(parents(parent)));
            }
        }
    }

    private static List<Code<Genotype>> parents(Genotype genotype) {
        List<Code<Genotype>> parents = new ArrayList<>(genotype.pollenParent().candidates());
        genotype.seedParent().ifPresent(parents::add);
        genotype.sportOf().ifPresent(parents::add);
        return parents;
    }
}
