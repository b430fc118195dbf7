package pippinry.pedigree.internal.kinship;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pippinry.statistics.mixed.Estimates;
import pippinry.statistics.mixed.MixedModel;
import pippinry.statistics.mixed.RandomTerm;
import pippinry.statistics.mixed.Reml;
import pippinry.statistics.sparse.SparseSymmetric;

/** The inverse where it is used: breeding values of published and simulated animal models. */
class AnimalModelTest {
    /** Records and the pedigree of those they are of. */
    private static final class Plants {
        private final NamedPedigree pedigree;
        private final List<NamedCsvRecord> data;
        private final RelationshipInverse inverse;

        Plants(String pedigree, String data) {
            this.pedigree = NamedPedigree.read(pedigree);
            this.data = NamedPedigree.table(data);
            this.inverse = RelationshipInverse.of(this.pedigree.kinship());
        }

        RandomTerm genotype() {
            double[] variances = new double[inverse.size()];
            for (int row = 0; row < variances.length; row++) {
                variances[row] = 1 + pedigree.kinship().inbreeding(inverse.individual(row));
            }
            SparseSymmetric matrix = new SparseSymmetric(inverse.columnStart(), inverse.rows(), inverse.values());
            int[] levelOf = data.stream()
                    .mapToInt(row -> inverse.row(pedigree.number(row.getField("id"))))
                    .toArray();
            return new RandomTerm(
                    "genotype",
                    inverse.size(),
                    levelOf,
                    Optional.of(
                            new RandomTerm.Covariance(matrix, pedigree.kinship().logDeterminant(), variances)));
        }

        RandomTerm permanent() {
            List<String> ids = levels("id");
            return RandomTerm.independent("id", ids.size(), classes("id"));
        }

        List<String> levels(String column) {
            return List.copyOf(
                    new TreeSet<>(data.stream().map(row -> row.getField(column)).toList()));
        }

        int[] classes(String column) {
            List<String> levels = levels(column);
            return data.stream()
                    .mapToInt(row -> levels.indexOf(row.getField(column)))
                    .toArray();
        }

        MixedModel.Draft model(String value, String... fixed) {
            MixedModel.Draft draft = MixedModel.of(data.stream()
                    .mapToDouble(row -> Double.parseDouble(row.getField(value)))
                    .toArray());
            for (String column : fixed) draft.classes(levels(column), classes(column));
            return draft;
        }

        Estimates.Effect effect(Estimates estimates, String id) {
            return estimates.effects("genotype").get(inverse.row(pedigree.number(id)));
        }
    }

    /** Mrode (2014) Linear Models for the Prediction of Animal Breeding Values, 3rd ed., Example 3.1; recomputed in R two ways. */
    @Test
    void eightAnimalsOfATextbookHaveTheirBreedingValues() {
        Plants eight = new Plants("animal-model-8-pedigree.csv", "animal-model-8-data.csv");
        Estimates estimates =
                Reml.at(eight.model("gain", "sex").random(eight.genotype()).done(), 20, 40);
        for (NamedCsvRecord row : NamedPedigree.table("animal-model-8-expected.csv")) {
            Estimates.Effect effect = eight.effect(estimates, row.getField("id"));
            double expected = Double.parseDouble(row.getField("value"));
            switch (row.getField("quantity")) {
                case "ebv" -> assertEquals(expected, effect.value(), 1e-9);
                case "PEV" -> assertEquals(expected, effect.se() * effect.se(), 1e-8);
                default -> assertEquals(expected, effect.reliability(), 1e-9);
            }
        }
    }

    /** The same book, Example 4.1: two records each, a permanent effect of the individual beside the breeding value. */
    @Test
    void repeatedRecordsGiveBreedingValueAndPermanentEffect() {
        Plants repeated = new Plants("repeatability-pedigree.csv", "repeatability-data.csv");
        Estimates estimates = Reml.at(
                repeated.model("fat", "hys", "parity")
                        .random(repeated.genotype())
                        .random(repeated.permanent())
                        .done(),
                20,
                12,
                28);
        for (NamedCsvRecord row : NamedPedigree.table("repeatability-expected.csv")) {
            double expected = Double.parseDouble(row.getField("value"));
            String id = row.getField("id");
            Estimates.Effect effect = repeated.effect(estimates, id);
            switch (row.getField("quantity")) {
                case "ebv" -> assertEquals(expected, effect.value(), 1e-8);
                case "PEV_ebv" -> assertEquals(expected, effect.se() * effect.se(), 1e-8);
                default ->
                    assertEquals(
                            expected,
                            estimates
                                    .effects("id")
                                    .get(repeated.levels("id").indexOf(id))
                                    .value(),
                            1e-8);
            }
        }
    }

    /** A thousand simulated plants, 200 of them compared; R 4.2.2 with Matrix 1.5-3 on the same equations, variances 4, 1, 6.25. */
    @Test
    void aThousandPlantsAgreeWithR() {
        Plants plants = new Plants("bench-1000.csv", "bench-1000-records.csv");
        Estimates estimates = Reml.at(
                plants.model("y", "year")
                        .random(plants.genotype())
                        .random(plants.permanent())
                        .done(),
                4,
                1,
                6.25);
        double first = estimates.fixed().get("intercept").value();
        for (NamedCsvRecord row : NamedPedigree.table("bench-1000-expected.csv")) {
            double expected = Double.parseDouble(row.getField("value"));
            String id = row.getField("id");
            switch (row.getField("quantity")) {
                case "year" -> {
                    boolean base = id.equals(plants.levels("year").get(0));
                    double year = first + (base ? 0 : estimates.fixed().get(id).value());
                    assertEquals(expected, year, 1e-9);
                }
                case "ebv" ->
                    assertEquals(expected, plants.effect(estimates, id).value(), 1e-9);
                default -> {
                    double se = plants.effect(estimates, id).se();
                    assertEquals(expected, se * se, 1e-9);
                }
            }
        }
    }

    /** REML of the same by a derivative-free search in R: variances and log-likelihood. */
    @Test
    void variancesOfAThousandPlantsAgreeWithR() {
        Plants plants = new Plants("bench-1000.csv", "bench-1000-records.csv");
        Estimates estimates = Reml.of(plants.model("y", "year")
                .random(plants.genotype())
                .random(plants.permanent())
                .done());
        assertEquals(3.7862373352, estimates.variances().get("genotype").value(), 1e-5);
        assertEquals(1.16340109874, estimates.variances().get("id").value(), 1e-5);
        assertEquals(6.60208057555, estimates.variances().get("residual").value(), 1e-5);
        double heritability = 3.7862373352 / (3.7862373352 + 1.16340109874 + 6.60208057555);
        assertEquals(heritability, estimates.share("genotype").value(), 1e-6);
    }
}
