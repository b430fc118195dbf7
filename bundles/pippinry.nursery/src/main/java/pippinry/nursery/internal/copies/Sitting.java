package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Graft;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.value.Code;
import pippinry.nursery.internal.work.Counted;

/**
 * Grafts of one batch that were made on one day in one way.
 *
 * @param batch the cross whose seedlings they are, else the genotype
 */
record Sitting(String batch, LocalDate day, String method, List<Graft> grafts) {

    static Stream<Sitting> of(Program program, Stream<Graft> grafts) {
        record Key(String batch, LocalDate day, String method) {}
        Comparator<Key> order =
                Comparator.comparing(Key::day).thenComparing(Key::batch).thenComparing(Key::method);
        Map<Key, List<Graft>> sittings = grafts.collect(Collectors.groupingBy(
                graft -> new Key(
                        batch(program, graft), graft.date().orElseThrow().latest(), graft.method()),
                () -> new TreeMap<>(order),
                Collectors.toList()));
        return sittings.entrySet().stream()
                .map(some -> new Sitting(
                        some.getKey().batch(),
                        some.getKey().day(),
                        some.getKey().method(),
                        some.getValue()));
    }

    boolean isBudding() {
        return method.toLowerCase(java.util.Locale.ROOT).contains("bud");
    }

    String list() {
        String named =
                grafts.stream().limit(12).map(graft -> graft.plant().text()).collect(Collectors.joining(", "));
        return grafts.size() > 12 ? named + " and " + (grafts.size() - 12) + " more" : named;
    }

    List<String> numbers() {
        return grafts.stream().map(graft -> graft.plant().text()).toList();
    }

    String count() {
        return Counted.of(grafts.size(), "graft");
    }

    private static String batch(Program program, Graft graft) {
        return program.find(Kinds.PLANTS, graft.plant())
                .flatMap(Plant::genotype)
                .map(genotype -> family(program, genotype.text()))
                .orElse(graft.plant().text());
    }

    /** The cross of a seedling's number if it is on file, else the number itself. */
    static String family(Program program, String genotype) {
        int cut = genotype.lastIndexOf('-');
        return cut > 0
                ? program.find(Kinds.CROSSES, Code.<Cross>of(genotype.substring(0, cut)))
                        .map(cross -> cross.code().text())
                        .orElse(genotype)
                : genotype;
    }
}
