package pippinry.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A cross and all that comes of it. */
final class Family {

    private final Plan plan;
    private final Genotype seed;
    private final Optional<Genotype> pollen;
    private final List<Bough> boughs = new ArrayList<>();
    private final List<Lot> lots = new ArrayList<>();
    private final List<Genotype> seedlings = new ArrayList<>();

    /** @param pollen empty if bees brought it from anywhere */
    Family(Plan plan, Genotype seed, Optional<Genotype> pollen) {
        this.plan = plan;
        this.seed = seed;
        this.pollen = pollen;
    }

    Plan plan() {
        return plan;
    }

    String code() {
        return plan.code();
    }

    Genotype seed() {
        return seed;
    }

    Optional<Genotype> pollen() {
        return pollen;
    }

    /** The pollen parent as it is written on file. */
    String pollenOnFile() {
        return pollen.map(Genotype::code).orElse("op");
    }

    List<Bough> boughs() {
        return boughs;
    }

    List<Lot> lots() {
        return lots;
    }

    List<Genotype> seedlings() {
        return seedlings;
    }

    int fruits() {
        return boughs.stream().mapToInt(Bough::harvested).sum();
    }
}
