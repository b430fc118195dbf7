package pippinry.story.internal.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Kinds;
import pippinry.story.internal.Growing;

class StoryTest {

    private final Program program = new Growing()
            .with(
                    Kinds.GENOTYPES,
                    "code",
                    "FIE",
                    "name",
                    "Fiesta",
                    "seed_parent",
                    "COX",
                    "seed_link",
                    "likely",
                    "link_ground",
                    "S-alleles")
            .with(Kinds.GENOTYPES, "code", "COX")
            .with(Kinds.GENOTYPES, "code", "FLO", "name", "Florina")
            .with(
                    Kinds.GENOTYPES,
                    "code",
                    "11-001-001",
                    "seed_parent",
                    "FIE",
                    "seed_link",
                    "sure",
                    "pollen_parent",
                    "FLO",
                    "ploidy",
                    "2")
            .with(Kinds.GENOTYPES, "code", "11-001-002", "seed_parent", "FIE", "pollen_parent", "FLO|COX")
            .with(Kinds.GENOTYPES, "code", "REDFIE", "sport_of", "FIE")
            .with(
                    Kinds.PLANTS,
                    "tag",
                    "11-001-001A",
                    "genotype",
                    "11-001-001",
                    "kind",
                    "own-root",
                    "status",
                    "dead",
                    "ended_on",
                    "2019",
                    "cause",
                    "fire blight")
            .with(
                    Kinds.PLANTS,
                    "tag",
                    "11-001-001B",
                    "genotype",
                    "11-001-001",
                    "copy_of",
                    "11-001-001A",
                    "certainty",
                    "doubtful",
                    "rootstock",
                    "M9")
            .with(Kinds.PLANTS, "tag", "FIE1", "genotype", "FIE")
            .with(Kinds.BLOCKS, "block", "A")
            .with(
                    Kinds.PLACES,
                    "plant",
                    "11-001-001A",
                    "block",
                    "A",
                    "row",
                    "1",
                    "place",
                    "5",
                    "from",
                    "2012",
                    "to",
                    "2019")
            .with(Kinds.PLACES, "plant", "11-001-001B", "block", "A", "row", "1", "place", "5", "from", "2020-03-01")
            .with(Kinds.SAMPLES, "sample", "F18", "plant", "11-001-001A")
            .with(
                    Kinds.SCORES,
                    "subject",
                    "11-001-001A",
                    "trait",
                    "brix",
                    "value",
                    "12.5",
                    "unit",
                    "°Brix",
                    "date",
                    "2018-10-02",
                    "scorer",
                    "IN")
            .with(Kinds.SCORES, "subject", "F18", "trait", "brix", "value", "13", "date", "2017")
            .with(Kinds.SCORES, "subject", "11-001-001A", "trait", "aroma", "value", "ns", "date", "2018")
            .with(Kinds.SCORES, "subject", "FIE1", "trait", "aroma", "value", "9")
            .with(
                    Kinds.DECISIONS,
                    "genotype",
                    "11-001-001",
                    "decision",
                    "keep",
                    "date",
                    "2018-12",
                    "person",
                    "OD",
                    "grounds",
                    "clean of scab")
            .with(Kinds.NOTES, "subject", "A/1/5", "text", "wet corner")
            .with(Kinds.TASKS, "batch", "11-001-001B", "date", "2026-04-01", "text", "stake it")
            .with(Kinds.CROSSES, "code", "11-001", "seed_parent", "FIE", "pollen_parent", "FLO")
            .with(Kinds.POLLINATIONS, "tag", "11-001/1", "cross", "11-001")
            .with(Kinds.VISITS, "pollination", "11-001/1", "did", "bagged")
            .with(Kinds.SEEDLOTS, "code", "L11-001", "cross", "11-001")
            .with(Kinds.CHILLING, "lot", "L11-001", "from", "2011-12-01")
            .program();

    private Story story(String number) {
        return new Story(program, (Looked.Found) new Lookup(program).look(number));
    }

    @Test
    void aGenotypesStoryHasItsPlantsAndWhatIsSaidOfThem() {
        Story story = story("11-001-001");
        assertEquals(Set.of("11-001-001", "11-001-001A", "11-001-001B", "F18"), story.family());
        assertEquals(2, story.records(Kinds.PLANTS).size());
        assertEquals(
                List.of("aroma ns", "brix 13", "brix 12.5"),
                story.records(Kinds.SCORES).stream()
                        .map(score -> score.trait() + " " + score.value())
                        .toList());
        assertEquals(1, story.records(Kinds.DECISIONS).size());
        assertEquals(1, story.records(Kinds.TASKS).size());
        assertEquals(
                List.of("11-001-001B"),
                story.placesNow().stream().map(place -> place.plant().text()).toList());
    }

    @Test
    void aCrossesStoryGoesFromBranchToSeed() {
        Story story = story("11-001");
        assertEquals(Set.of(Kinds.POLLINATIONS, Kinds.VISITS, Kinds.SEEDLOTS, Kinds.CHILLING), story.kinds());
    }

    @Test
    void aPlacesStoryHasWhoStandsAndStoodThere() {
        Story story = story("A/1/5");
        assertEquals(2, story.records(Kinds.PLACES).size());
        assertEquals("wet corner", story.records(Kinds.NOTES).get(0).text());
        assertTrue(StoryWords.of(story, List.of()).contains("Stands now\n  11-001-001B at A/1/5 from 2020-03-01\n"));
    }

    @Test
    void offspringAreCountedByWhatTheyHaveItAs() {
        assertEquals(Map.of("as_seed_parent", 2, "sports", 1), story("FIE").offspring());
        assertEquals(
                Map.of("as_pollen_parent", 1, "perhaps_as_pollen_parent", 1),
                story("FLO").offspring());
    }

    @Test
    void doubtFollowsThePlantAndComesDownFromItsAncestors() {
        assertEquals(
                List.of(
                        "That 11-001-001B is 11-001-001 is doubtful.",
                        "That COX is the seed parent of FIE is likely (ground: S-alleles)."),
                Doubts.of(story("11-001-001")));
        assertEquals(
                List.of(
                        "The pollen of 11-001-002 came from one of FLO, COX.",
                        "That COX is the seed parent of FIE is likely (ground: S-alleles)."),
                Doubts.of(story("11-001-002")));
        assertEquals(List.of(), Doubts.of(story("COX")));
    }

    @Test
    void theJsonHasTheColumnsOfThePlainTables() {
        DueTask task = new DueTask(
                "11-001-001B",
                "stake",
                LocalDate.of(2026, 4, 1),
                LocalDate.of(2026, 5, 1),
                "Stake it",
                "",
                Optional.empty());
        Map<String, Object> json = StoryJson.of(story("11-001-001"), List.of(task));
        assertEquals("6", json.get("check"));
        assertEquals("genotypes", json.get("table"));
        assertEquals(2, ((Map<?, ?>) json.get("record")).get("ploidy"));
        assertEquals(null, ((Map<?, ?>) json.get("record")).get("name"));
        assertEquals(
                List.of(
                        "subject",
                        "trait",
                        "value",
                        "unit",
                        "date",
                        "time",
                        "part",
                        "scorer",
                        "instrument",
                        "sample",
                        "sheet",
                        "note"),
                List.copyOf(((Map<?, ?>) ((List<?>) json.get("scores")).get(0)).keySet()));
        assertEquals(Map.of("code", "FIE", "name", "Fiesta"), ((Map<?, ?>) json.get("parents")).get("seed_parent"));
        assertEquals(List.of(), json.get("moves"));
        assertEquals("Stake it", ((Map<?, ?>) ((List<?>) json.get("due")).get(0)).get("text"));
    }

    @Test
    void theWordsTellItSectionBySection() {
        assertEquals(
                """
                11-001-001=6
                  genotype: ploidy 2
                Parents
                  seed parent Fiesta [FIE] (sure), pollen parent Florina [FLO]
                Doubt
                  That 11-001-001B is 11-001-001 is doubtful.
                  That COX is the seed parent of FIE is likely (ground: S-alleles).
                Plants
                  11-001-001A: own-root, dead 2019 (fire blight)
                  11-001-001B: plant on M9
                Stands now
                  11-001-001B at A/1/5 from 2020-03-01
                Stood before
                  11-001-001A at A/1/5 from 2012 to 2019
                Scores
                  aroma: 2018 not seen [A]
                  brix: 2017 13 [F18]; 2018-10-02 12.5 °Brix [A] IN
                Decisions
                  2018-12 keep by OD: clean of scab
                Samples
                  F18; plant 11-001-001A
                Tasks
                  batch 11-001-001B; 2026-04-01; stake it
                """,
                StoryWords.of(story("11-001-001"), List.of()));
    }
}
