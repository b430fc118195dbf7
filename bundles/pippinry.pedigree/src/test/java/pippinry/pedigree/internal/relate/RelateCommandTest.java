package pippinry.pedigree.internal.relate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import pippinry.commandline.Answer;
import pippinry.commandline.CallRefused;

class RelateCommandTest {
    private static final String FAMILY =
            """
            code,seed_parent,pollen_parent
            X,P,Q
            P,A,B
            Q,A,B
            Y,X,op
            Z,X,P|Q
            S,P,self
            U,A,unknown
            """;

    @TempDir
    Path folder;

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static Answer relate(String... arguments) throws CallRefused {
        RelateCommand command = new RelateCommand();
        new CommandLine(command).parseArgs(arguments);
        return command.run(null);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Double> part(Answer answer, String key) {
        return (Map<String, Double>) answer.json().get(key);
    }

    @Test
    void everybodyHasTheirInbreedingAlsoFoundersWithoutARow() throws Exception {
        Map<String, Double> inbreeding = part(relate(file("ped.csv", FAMILY)), "inbreeding");
        assertEquals(List.of("X", "P", "Q", "A", "B", "Y", "Z", "S", "U"), List.copyOf(inbreeding.keySet()));
        assertEquals(0.25, inbreeding.get("X"));
        assertEquals(0.5, inbreeding.get("S"));
        assertEquals(0.0, inbreeding.get("A"));
        assertEquals(0.375, inbreeding.get("Z"));
        assertEquals((0.25 + 0.25 + 0.375 + 0.375) / 4, inbreeding.get("Y"));
        assertEquals(9, inbreeding.size());
    }

    @Test
    void answersComeInTheOrderOfTheContract() throws Exception {
        String pairs = file("pairs.csv", "b,a\nX,X\nU,A\n");
        Answer answer = relate(file("ped.csv", FAMILY), "--pairs", pairs);
        assertEquals(
                List.of("inbreeding", "kinship", "founders", "notes"),
                List.copyOf(answer.json().keySet()));
        assertEquals(
                List.of(Map.of("a", "X", "b", "X", "f", 0.625), Map.of("a", "A", "b", "U", "f", 0.25)),
                answer.json().get("kinship"));
        String plain = file("plain.csv", "code,seed_parent,pollen_parent\nC,A,B\n");
        assertEquals(
                List.of("inbreeding", "founders"),
                List.copyOf(relate(plain).json().keySet()));
    }

    @Test
    void foundersAreOfTheGroupOrOfAllWithoutOffspring() throws Exception {
        String ped = file("ped.csv", "code,seed_parent,pollen_parent\nC,A,B\nD,A,B\nE,C,D\nF,C,G\n");
        Map<String, Double> youngest = part(relate(ped), "founders");
        double a = (0.5 + 0.25) / 2;
        assertEquals(1 / (2 * a * a + 0.25 * 0.25), youngest.get("effective_number"), 1e-14);
        Map<String, Double> chosen = part(relate(ped, "--of", file("group.csv", "code\nA\nB\n")), "founders");
        assertEquals(2, chosen.get("effective_number"), 1e-14);
        assertEquals(2, chosen.get("genome_equivalents"), 1e-14);
    }

    @Test
    void thePollenGroupCanBeNamed() throws Exception {
        String ped = file("ped.csv", "code,seed_parent,pollen_parent\nC,A,op\nD,A,B\nE,F,G\n");
        Map<String, Double> inbreeding =
                part(relate(ped, "--pollen-group", file("pollen.csv", "code\nD\nB\n")), "inbreeding");
        assertEquals(0.0, inbreeding.get("C"));
        String pairs = file("pairs.csv", "a,b\nC,B\n");
        Answer answer = relate(ped, "--pollen-group", file("pollen.csv", "code\nF\nB\n"), "--pairs", pairs);
        assertEquals(
                List.of(Map.of("a", "C", "b", "B", "f", 0.125)), answer.json().get("kinship"));
    }

    @Test
    void doubtfulLinksAreToldForWhatRestsOnThem() throws Exception {
        String ped = file(
                "ped.csv",
                "code,seed_parent,pollen_parent,seed_link,pollen_link\nC,A,B,sure,doubtful\nD,C,E,,\nG,B,A,likely,\n");
        String pairs = file("pairs.csv", "a,b\nD,B\nD,C\n");
        assertEquals(
                List.of(
                        "2 have a parent who is not sure; 3 with all who descend from them.",
                        "f(D, B): the pollen parent of C, B, is doubtful."),
                relate(ped, "--pairs", pairs).json().get("notes"));
    }

    @Test
    void aPersonReadsItInWords() throws Exception {
        Answer answer = relate(file("ped.csv", FAMILY), "--pairs", file("pairs.csv", "a,b\nX,A\n"));
        assertTrue(answer.words().startsWith("9 individuals, 4 of them inbred, mean F "), answer.words());
        assertTrue(answer.words().contains("f 0.250000  X, A"), answer.words());
        assertTrue(answer.words().contains("Henderson 1988"), answer.words());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "A,B,A; line 2, column pollen_parent: 'A'; A would be its own ancestor (A from A)",
                "A,B,x|A; line 2, column pollen_parent: 'A'; A would be its own ancestor (A from A)",
                "A,B,C\\nA,B,C; line 3, column code: 'A'; expected each code once; it is on line 2 already",
                "A,op,C; line 2, column seed_parent: 'op'; expected a code",
                "A,self,C; line 2, column seed_parent: 'self'; expected a code",
                "A,,self; line 2, column pollen_parent: 'self'; expected self only beside one known seed parent",
                "A,B,C||D; line 2, column pollen_parent: 'C||D'; expected different codes parted by |",
                "A,B,C|C; line 2, column pollen_parent: 'C|C'; expected different codes parted by |",
                "op,B,C; line 2, column code: 'op'; expected a code",
                ",B,C; line 2, column code: ''; expected something",
                "A|B,B,C; line 2, column code: 'A|B'; expected a code without |"
            })
    void aWrongRowIsNamedWithWhatWasExpected(String rows, String expected) throws Exception {
        String ped = file("ped.csv", "code,seed_parent,pollen_parent\n" + rows.replace("\\n", "\n"));
        CallRefused refused = assertThrows(CallRefused.class, () -> relate(ped));
        String complaint = refused.getMessage();
        assertTrue(complaint.contains(expected.strip()), complaint);
        assertTrue(complaint.startsWith(ped), complaint);
    }

    @Test
    void aLoopOfThreeIsNamedWhole() throws Exception {
        String ped = file("ped.csv", "code,seed_parent,pollen_parent\nA,B,C\nC,E,D\nD,A,\n");
        CallRefused refused = assertThrows(CallRefused.class, () -> relate(ped));
        assertEquals(
                ped + " line 2, column pollen_parent: 'C'; A would be its own ancestor (A from C from D from A);"
                        + " expected parents that do not descend from it",
                refused.getMessage());
    }

    @Test
    void aPairOrGroupThatNamesAStrangerIsRefused() throws Exception {
        String ped = file("ped.csv", FAMILY);
        String pairs = file("pairs.csv", "a,b\nX,Nobody\n");
        CallRefused stranger = assertThrows(CallRefused.class, () -> relate(ped, "--pairs", pairs));
        assertTrue(stranger.getMessage().contains("line 2, column b: 'Nobody'; expected a code that stands in"));
        String group = file("group.csv", "code\nX\nX\n");
        CallRefused twice = assertThrows(CallRefused.class, () -> relate(ped, "--of", group));
        assertTrue(twice.getMessage().contains("line 3, column code: 'X'; expected each code once"));
        String none = file("none.csv", "code\n");
        assertThrows(CallRefused.class, () -> relate(ped, "--of", none));
    }
}
