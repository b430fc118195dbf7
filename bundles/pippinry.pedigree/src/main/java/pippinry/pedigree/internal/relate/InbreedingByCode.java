package pippinry.pedigree.internal.relate;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import pippinry.pedigree.internal.kinship.Kinship;

/** Codes with their F, in the order of the table, without a copy of a million of them. */
final class InbreedingByCode extends AbstractMap<String, Double> {
    private final PedigreeTable table;
    private final Kinship kinship;

    InbreedingByCode(PedigreeTable table, Kinship kinship) {
        this.table = table;
        this.kinship = kinship;
    }

    @Override
    public Double get(Object code) {
        return table.find(String.valueOf(code)).map(kinship::inbreeding).orElse(null);
    }

    @Override
    public Set<Map.Entry<String, Double>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Map.Entry<String, Double>> iterator() {
                return IntStream.range(0, table.size())
                        .mapToObj(who -> Map.entry(table.code(who), kinship.inbreeding(who)))
                        .iterator();
            }

            @Override
            public int size() {
                return table.size();
            }
        };
    }
}
