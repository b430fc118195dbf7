package pippinry.story.internal.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.lenient;
import static org.mockito.Mockito.mock;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.Settled;
import pippinry.model.record.Kinds;
import pippinry.story.internal.Growing;

class VerificationTest {

    private static final String YES = "fault";
    private static final String ASK = "question";

    private static Growing sound() {
        return new Growing()
                .with(Kinds.GENOTYPES, "code", "FIE", "year", "1972")
                .with(Kinds.GENOTYPES, "code", "26-014-073", "seed_parent", "FIE", "year", "2026")
                .with(Kinds.CROSSES, "code", "26-014", "seed_parent", "FIE")
                .with(Kinds.PLANTS, "tag", "26-014-073A", "genotype", "26-014-073", "made_on", "2026")
                .with(Kinds.PLANTS, "tag", "26-014-073B", "genotype", "26-014-073")
                .with(Kinds.BLOCKS, "block", "A")
                .with(Kinds.ROWS, "block", "A", "row", "1", "places", "9")
                .with(
                        Kinds.PLACES,
                        "plant",
                        "26-014-073A",
                        "block",
                        "A",
                        "row",
                        "1",
                        "place",
                        "5",
                        "from",
                        "2026",
                        "to",
                        "2027")
                .with(Kinds.PLACES, "plant", "26-014-073B", "block", "A", "row", "1", "place", "5", "from", "2027");
    }

    static Stream<Arguments> whatIsFound() {
        return Stream.of(
                found(
                        YES,
                        "genotypes X, seed_parent 'Y': nothing with this code is on file in genotypes",
                        new Growing().with(Kinds.GENOTYPES, "code", "X", "seed_parent", "Y")),
                found(
                        YES,
                        "genotypes X, code 'X': this is on file already",
                        new Growing()
                                .with(Kinds.GENOTYPES, "code", "X")
                                .with(Kinds.GENOTYPES, "code", "X", "name", "x")),
                found(
                        YES,
                        "nevergiven 26-014-073, number '26-014-073': it stands as never given, yet something has it",
                        sound().with(Kinds.NEVERGIVEN, "number", "26-014-073")),
                found(
                        YES,
                        "places A/1/5, plant '26-014-074A': it stands where 26-014-073B stands at the same time",
                        sound().with(Kinds.PLANTS, "tag", "26-014-074A")
                                .with(
                                        Kinds.PLACES,
                                        "plant",
                                        "26-014-074A",
                                        "block",
                                        "A",
                                        "row",
                                        "1",
                                        "place",
                                        "5",
                                        "from",
                                        "2029")),
                found(
                        YES,
                        "places 26-014-073B, place 'A/1/6': it stands at A/1/5 at the same time",
                        sound().with(
                                        Kinds.PLACES,
                                        "plant",
                                        "26-014-073B",
                                        "block",
                                        "A",
                                        "row",
                                        "1",
                                        "place",
                                        "6",
                                        "from",
                                        "2030")),
                found(
                        YES,
                        "plants 26-014-073C, ended_on '2024': it was made later, on 2025",
                        sound().with(Kinds.PLANTS, "tag", "26-014-073C", "made_on", "2025", "ended_on", "2024")),
                found(
                        YES,
                        "genotypes OLD, seed_parent 'FIE': the child is of 1950, its parent of 1972",
                        sound().with(Kinds.GENOTYPES, "code", "OLD", "seed_parent", "FIE", "year", "1950")),
                found(
                        ASK,
                        "plants 26-014-075A, genotype 'FIE': its number says 26-014-075, and its certainty does not say"
                                + " likely or doubtful",
                        sound().with(Kinds.PLANTS, "tag", "26-014-075A", "genotype", "FIE")),
                found(
                        ASK,
                        "genotypes 26-014-076, seed_parent '26-014-073': its cross 26-014 has the seed parent FIE",
                        sound().with(Kinds.GENOTYPES, "code", "26-014-076", "seed_parent", "26-014-073")),
                found(
                        ASK,
                        "places T-1, to '': it is dead since 2020, yet its place A/1/7 is not free",
                        sound().with(Kinds.PLANTS, "tag", "T-1", "status", "dead", "ended_on", "2020")
                                .with(Kinds.PLACES, "plant", "T-1", "block", "A", "row", "1", "place", "7")),
                found(
                        ASK,
                        "places T-1, place '10': the row A/1 has 9 places",
                        sound().with(Kinds.PLANTS, "tag", "T-1")
                                .with(Kinds.PLACES, "plant", "T-1", "block", "A", "row", "1", "place", "10")),
                found(
                        ASK,
                        "scores row 0, date '2021-05-01': T-1 ended on 2020",
                        sound().with(Kinds.PLANTS, "tag", "T-1", "status", "dead", "ended_on", "2020")
                                .with(
                                        Kinds.SCORES,
                                        "subject",
                                        "T-1",
                                        "trait",
                                        "bbch",
                                        "value",
                                        "65",
                                        "date",
                                        "2021-05-01")),
                found(
                        ASK,
                        "pollinations 26-014/1, set_fruits '12': this is more than 10 in flowers",
                        sound().with(Kinds.POLLINATIONS, "tag", "26-014/1", "flowers", "10", "set_fruits", "12")),
                found(
                        ASK,
                        "seedlots L1, potted '9': this is more than 8 in emerged",
                        sound().with(Kinds.SEEDLOTS, "code", "L1", "sown", "20", "emerged", "8", "potted", "9")),
                found(
                        ASK,
                        "samples F1, tasted, pressed and stored '11': this is more than 10 in fruits",
                        sound().with(
                                        Kinds.SAMPLES,
                                        "sample",
                                        "F1",
                                        "fruits",
                                        "10",
                                        "tasted",
                                        "2",
                                        "pressed",
                                        "4",
                                        "stored",
                                        "5")),
                found(
                        ASK,
                        "samples F1, fruits taken out '6': this is more than 5 in stored",
                        sound().with(Kinds.SAMPLES, "sample", "F1", "stored", "5")
                                .with(Kinds.TAKEOUTS, "sample", "F1", "out_on", "2026-11", "fruits", "3")
                                .with(Kinds.TAKEOUTS, "sample", "F1", "out_on", "2026-12", "fruits", "3")),
                found(
                        ASK,
                        "photos FIE, file '2026/1.jpg': this photo is not in nowhere/photos",
                        sound().with(Kinds.PHOTOS, "subject", "FIE", "file", "2026/1.jpg")));
    }

    private static Arguments found(String how, String what, Growing growing) {
        return Arguments.of(how, what, growing);
    }

    @ParameterizedTest
    @MethodSource("whatIsFound")
    void isFound(String how, String what, Growing growing) {
        List<Finding> findings = findings(growing.broken(), growing.changes());
        assertTrue(
                findings.stream()
                        .anyMatch(finding -> finding.toString().equals(what) && finding.fault() == how.equals(YES)),
                findings.toString());
        assertEquals(1, findings.size(), findings.toString());
    }

    @Test
    void aSoundProgramHasNothingToFind() {
        assertEquals(List.of(), findings(sound().program(), sound().changes()));
    }

    @Test
    void partialDatesGiveTheBenefitOfTheDoubt() {
        Growing growing = new Growing()
                .with(Kinds.BLOCKS, "block", "A")
                .with(Kinds.PLANTS, "tag", "T-1")
                .with(Kinds.PLANTS, "tag", "T-2")
                .with(
                        Kinds.PLACES,
                        "plant",
                        "T-1",
                        "block",
                        "A",
                        "row",
                        "1",
                        "place",
                        "5",
                        "from",
                        "2011",
                        "to",
                        "2016")
                .with(Kinds.PLACES, "plant", "T-2", "block", "A", "row", "1", "place", "5", "from", "2016-03-01");
        assertEquals(List.of(), findings(growing.program(), growing.changes()));
    }

    @Test
    void aHistoryThatLeadsElsewhereIsAFault() {
        List<Settled<?>> less = sound().changes().subList(0, sound().changes().size() - 1);
        List<Finding> findings = findings(sound().program(), less);
        assertEquals(
                List.of("places : the history does not lead to the records as they stand"),
                findings.stream().map(Finding::toString).toList());
    }

    private static List<Finding> findings(Program program, List<Settled<?>> changes) {
        ProgramStore store = mock(ProgramStore.class);
        lenient().when(store.now()).thenReturn(program);
        lenient().when(store.folder()).thenReturn(Path.of("nowhere"));
        lenient().when(store.changesOf(1)).thenReturn(changes);
        lenient()
                .when(store.history())
                .thenReturn(List.of(new HistoryLine(
                        1, Instant.EPOCH, "IN", "test", changes.size(), OptionalLong.empty(), OptionalLong.empty())));
        return new Verification(store).run(done -> {});
    }
}
