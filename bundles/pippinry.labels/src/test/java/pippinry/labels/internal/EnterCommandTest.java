package pippinry.labels.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.commandline.Answer;
import pippinry.commandline.CallRefused;
import pippinry.labels.internal.wanted.SmallProgram;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.record.Score;
import pippinry.model.record.Visit;
import pippinry.model.value.Code;

class EnterCommandTest {
    private static final String FIRST = "24-003-002B";
    private static final String SECOND = "COX-A";

    @TempDir
    Path folder;

    private FakeCall call;

    @BeforeEach
    void open() throws Exception {
        call = new FakeCall(SmallProgram.larkmoor()
                        .row(Kinds.TRAITS, "code=blush", "low=0", "high=5", "states=0 none|5 all round")
                        .row(Kinds.TRAITS, "code=girth", "unit=mm", "low=5", "high=400")
                        .row(Kinds.SHEETS, "sheet=S-0001", "traits=girth", "subjects=24-003-002B|COX-A", "note=trees")
                        .row(
                                Kinds.SHEETS,
                                "sheet=S-0002",
                                "traits=blush|girth",
                                "subjects=24-003-002B|COX-A",
                                "note=trees")
                        .row(Kinds.SHEETS, "sheet=S-0003", "traits=set", "subjects=26-015/2", "note=pollinations")
                        .row(Kinds.SHEETS, "sheet=S-0004", "traits=emerged", "subjects=25-002-S1", "note=seedlots")
                        .program())
                .in(folder);
    }

    private Answer atTerminal(String sheet, String... lines) throws Exception {
        return call.typing(lines).run(new EnterCommand(List.of(), true), sheet);
    }

    private Answer piped(String sheet, String... lines) throws Exception {
        return call.typing(lines).run(new EnterCommand(List.of(), false), sheet);
    }

    private List<String> scores() {
        return call.program().table(Kinds.SCORES).stream()
                .map(score -> score.subject() + " " + score.trait() + " " + score.value())
                .toList();
    }

    @Test
    void rowsFollowThePaperAndScoresCarrySheetDayAndScorer() throws Exception {
        Answer answer = atTerminal("S-0001", "41", "38.5");
        assertEquals(List.of("24-003-002B girth 41", "COX-A girth 38.5"), scores());
        Score score = call.program().table(Kinds.SCORES).stream().findFirst().orElseThrow();
        assertEquals(
                List.of("S-0001", "2026-03-27", "IN", "mm"),
                List.of(score.sheet(), score.date().orElseThrow().toString(), score.scorer(), score.unit()));
        assertEquals(2, answer.json().get("entered"));
    }

    @Test
    void aBlankRowIsNotEnteredAndNeverNotSeen() throws Exception {
        Answer answer = atTerminal("S-0001", "", "ns");
        assertEquals(List.of("COX-A girth ns"), scores());
        assertEquals(
                List.of(0, 1, 1),
                List.of(
                        answer.json().get("entered"),
                        answer.json().get("blank"),
                        answer.json().get("not_seen")));
    }

    @Test
    void whatWasEnteredLastCanBeTakenBack() throws Exception {
        Answer answer = atTerminal("S-0001", "41", "back", "14", "38");
        assertEquals(List.of("24-003-002B girth 14", "COX-A girth 38"), scores());
        assertEquals(2, answer.json().get("entered"));
        assertTrue(call.said().contains("Taken back: 24-003-002B girth 41 mm"), call.said());
    }

    @Test
    void anUnusualValueIsFiledWhenItIsTypedTwice() throws Exception {
        Answer answer = atTerminal("S-0001", "900", "90", "901", "901");
        assertEquals(List.of("24-003-002B girth 90", "COX-A girth 901"), scores());
        assertEquals(2, answer.json().get("questions"));
    }

    @Test
    void withNobodyToAskAnUnansweredQuestionEndsTheWork() throws Exception {
        CallRefused refused = assertThrows(CallRefused.class, () -> piped("S-0001", "900", "38"));
        assertTrue(refused.getMessage().contains("line 1 '900' is not confirmed by line 2"), refused.getMessage());
        assertTrue(scores().isEmpty(), "the second line is not taken for the first row");
    }

    @Test
    void rowsBeforeARefusedLineStayOnFile() throws Exception {
        CallRefused refused = assertThrows(CallRefused.class, () -> piped("S-0001", "41", "thick"));
        assertTrue(refused.getMessage().contains("row 2: line 2 'thick': girth 'thick': expected a number"));
        assertEquals(List.of("24-003-002B girth 41"), scores());
    }

    @Test
    void aNumberBeforeTheValueGoesToItsRow() throws Exception {
        atTerminal("S-0001", SECOND + "=" + CheckCharacter.of(SECOND) + "\t38");
        assertEquals(List.of("COX-A girth 38"), scores());
    }

    @Test
    void aWrongCheckIsRefusedWithTheNearestOfTheSheet() throws Exception {
        char wrong = CheckCharacter.of(FIRST) == '3' ? '4' : '3';
        atTerminal("S-0001", FIRST + "=" + wrong + " 38", ".");
        assertTrue(call.said().contains("the check is wrong; nearest on the sheet: " + FIRST), call.said());
        assertTrue(scores().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"5 41,5,41", "all 41,5,41", "none -,0,", "3;41,3,41"})
    void severalBoxesAreTypedInOneLine(String line, String blush, String girth) throws Exception {
        atTerminal("S-0002", line, ".");
        List<String> expected = girth == null
                ? List.of(FIRST + " blush " + blush)
                : List.of(FIRST + " blush " + blush, FIRST + " girth " + girth);
        assertEquals(expected, scores());
    }

    @Test
    void theSameLinesAgainChangeNothingAndOtherOnesAreAskedFor() throws Exception {
        piped("S-0001", "41", "38");
        piped("S-0001", "41", "38");
        assertEquals(2, call.program().table(Kinds.SCORES).size());
        piped("S-0001", "42", "42");
        assertEquals(List.of("24-003-002B girth 42", "COX-A girth 38"), scores());
    }

    @Test
    void countsOfBranchesBecomeVisitsAndStandWithTheBranch() throws Exception {
        Answer answer = atTerminal("S-0003", "30", "4");
        Visit visit = call.program().table(Kinds.VISITS).stream().findFirst().orElseThrow();
        assertEquals(Done.SET, visit.did().orElseThrow());
        assertEquals(4, visit.count().orElseThrow());
        assertEquals(
                4,
                call.program()
                        .find(Kinds.POLLINATIONS, Code.<Pollination>of("26-015/2"))
                        .orElseThrow()
                        .setFruits()
                        .orElseThrow());
        assertEquals(1, answer.json().get("questions"), "30 fruits of 24 flowers");
    }

    @Test
    void countsOfLotsBecomeCountsOfTheDay() throws Exception {
        atTerminal("S-0004", "26");
        assertEquals(
                26,
                call.program().table(Kinds.EMERGENCE).stream()
                        .findFirst()
                        .orElseThrow()
                        .emerged()
                        .orElseThrow());
    }

    @Test
    void aCountNotSeenIsNotedAndNeverZero() throws Exception {
        atTerminal("S-0003", "ns");
        assertEquals(0, call.program().table(Kinds.VISITS).size());
        assertEquals(
                "set not seen, sheet S-0003",
                call.program().table(Kinds.NOTES).stream()
                        .findFirst()
                        .orElseThrow()
                        .text());
    }

    @Test
    void aPhotoOfThePaperStaysWithIt() throws Exception {
        Path photo = Files.writeString(folder.resolve("IMG_1.JPG"), "a picture");
        call.typing(".").run(new EnterCommand(List.of(), true), "S-0001", "--photo", photo);
        String file = call.program().table(Kinds.PHOTOS).stream()
                .findFirst()
                .orElseThrow()
                .file();
        assertEquals("a picture", Files.readString(folder.resolve("photos").resolve(file)));
    }
}
