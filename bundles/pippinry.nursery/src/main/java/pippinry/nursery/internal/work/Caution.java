package pippinry.nursery.internal.work;

import java.util.Optional;

/** The usual cautions where nursery work can hurt someone; common practice, no source, unless said otherwise. */
public enum Caution {
    BLADES("Cut away from the body, keep the knife sharp and sheathed, disinfect between trees."),
    WOOD("Graft only from wood you know or have had tested; grafting spreads viruses for good."),
    LADDERS("Three-legged ladder on firm ground, never lean out, never alone."),
    POLLEN("Wear a mask and glasses when drying or sieving pollen."),
    /** Food Chemistry 2015, 170:437-442. */
    SEEDS("Apple, pear and plum seeds release cyanide when crushed: do not eat or feed them.");

    private final String line;

    Caution(String line) {
        this.line = line;
    }

    public Optional<String> line() {
        return Optional.of(line);
    }
}
