package pippinry.nursery.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.value.Code;
import pippinry.nursery.internal.copies.LimbMap;
import pippinry.nursery.internal.copies.OnlyCopy;
import pippinry.nursery.internal.copies.Roster;
import pippinry.nursery.internal.copies.Takes;
import pippinry.nursery.internal.copies.Takes.Take;
import pippinry.panels.Chapter;
import pippinry.panels.Page;

/** The book's chapter on grafts that took and on kept plants that could be lost in a night. */
@Component
public final class CopiesChapter implements Chapter {

    private static final int PAPER_WIDTH = 483;
    private static final int DRAWN_LIMBS = 3;
    private static final double MOST_ASPECT = 1.3;

    @Activate
    public CopiesChapter() {}

    @Override
    public int order() {
        return 50;
    }

    @Override
    public String title() {
        return "Grafts and copies";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        onlyCopies(program, page);
        hosts(program, page);
        Stream.of(Takes.By.values()).forEach(by -> takes(program, by, page));
    }

    private static void onlyCopies(Program program, Page page) {
        List<Plant> only = OnlyCopy.of(program).toList();
        if (!only.isEmpty()) {
            page.heading("Kept, with one living plant");
            page.paragraph("One vole, canker or digger ends each of these for good. Copies are safe in a second place"
                    + " before anything is moved or grubbed.");
            page.table(
                    List.of("Genotype", "Only plant", "How", "Where"),
                    only.stream().map(plant -> row(program, plant)).toList());
        }
    }

    private static List<String> row(Program program, Plant plant) {
        return List.of(
                plant.genotype().orElseThrow().text(),
                plant.tag().text(),
                plant.kind().map(kind -> kind.word()).orElse("")
                        + (plant.rootstock().isBlank() ? "" : " on " + plant.rootstock()),
                place(program, plant));
    }

    private static String place(Program program, Plant plant) {
        return program.table(Kinds.PLACES).citing(plant.tag().text()).stream()
                .map(row -> row.value())
                .filter(place -> place.plant().equals(plant.tag()) && place.to().isEmpty())
                .map(CopiesChapter::words)
                .findFirst()
                .or(() -> plant.host().map(host -> "limb on " + host))
                .orElse("");
    }

    private static String words(Occupancy place) {
        return place.block().map(block -> block + " ").orElse("") + "row " + place.row() + " place " + place.place();
    }

    private static void hosts(Program program, Page page) {
        Map<Code<Plant>, List<Plant>> hosts = program.table(Kinds.PLANTS).stream()
                .filter(plant -> plant.host().isPresent() && Roster.lives(plant))
                .collect(Collectors.groupingBy(plant -> plant.host().orElseThrow(), TreeMap::new, Collectors.toList()));
        hosts.forEach((host, limbs) -> {
            if (limbs.size() >= DRAWN_LIMBS) {
                LimbMap map = new LimbMap(limbs);
                page.heading("The limbs of " + host);
                page.picture(
                        map,
                        Math.min(map.aspect(PAPER_WIDTH), MOST_ASPECT),
                        limbs.size() + " living limbs of " + host
                                + " by height in m, west of the trunk to the left, east to the"
                                + " right, with the side they grow to.");
            }
        });
    }

    private static void takes(Program program, Takes.By by, Page page) {
        List<Take> takes = Takes.of(program, by);
        // One sort alone tells nothing apart, unless it is the first table.
        if (takes.isEmpty() || takes.size() == 1 && by != Takes.By.STOCK) {
            return;
        }
        page.heading("Take by " + by.word());
        page.table(
                List.of(by.word(), "taken", "read", "share", "95 % limits"),
                takes.stream().map(CopiesChapter::row).toList());
    }

    private static List<String> row(Take take) {
        return List.of(
                take.sort(),
                Integer.toString(take.taken()),
                Integer.toString(take.read()),
                percent(take.share()),
                percent(take.limits().low()) + " to " + percent(take.limits().high()));
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }
}
