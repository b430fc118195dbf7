package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program edited while modules are away is whole when they are back, and what their absence means is said. */
class AbsentModulesIT {

    private static final Path SCRIPT = RunningProgram.IMAGE.resolve("bin/pippinry");
    private static final String[] AWAY = {
        "--without", "pippinry.pedigree", "--without", "pippinry.labels", "--without", "pippinry.traits.apple"
    };

    @TempDir
    private static Path folder;

    private static Path program;

    @BeforeAll
    static void putAFamilyOnFile() throws Exception {
        program = folder.resolve("orchard");
        call("new", program.toString(), "--crop", "apple");
        table(
                "genotypes.csv",
                "code,name,kind,seed_parent,pollen_parent",
                "FIE,Fiesta,cultivar,,",
                "ELS,Elstar,cultivar,,",
                "25-001-001,,seedling,FIE,ELS");
        table("alleles.csv", "genotype,locus,alleles", "FIE,S,S3/S5", "25-001-001,Rvi6,Rvi6/rvi6");
        call(
                "import",
                program.toString(),
                folder.resolve("genotypes.csv").toString(),
                folder.resolve("alleles.csv").toString());
    }

    @Test
    void whatIsEditedWithoutThemIsThereWithThem() throws Exception {
        table(
                "scores.csv",
                "subject,trait,value,date",
                "25-001-001,scab_leaf,2,2026-08-20",
                "25-001-001,own_trait,x,2026");
        List<String> away = new ArrayList<>(List.of(AWAY));
        away.addAll(List.of(
                "import", program.toString(), folder.resolve("scores.csv").toString()));
        assertEquals(
                0,
                CalledProgram.of(SCRIPT, away.toArray(String[]::new)).answer().exit());
        assertEquals(exported("with", new String[0]), exported("without", AWAY));
        call("verify", "--program", program.toString());
    }

    @Test
    void theAbsenceOfThePedigreeIsSaidWhereItCounts() throws Exception {
        CalledProgram.Answer answer = CalledProgram.of(
                        SCRIPT, "--without", "pippinry.pedigree", "crosses", "--program", program.toString(), "--json")
                .answer();
        assertEquals(0, answer.exit(), answer.err());
        assertTrue(answer.out().contains("pedigree"), answer.out());
    }

    private static Map<String, String> exported(String name, String[] options) throws Exception {
        Path out = folder.resolve(name);
        List<String> call = new ArrayList<>(List.of(options));
        call.addAll(List.of("export", program.toString(), out.toString(), "--tables"));
        assertEquals(
                0,
                CalledProgram.of(SCRIPT, call.toArray(String[]::new)).answer().exit());
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> tables = Files.list(out)) {
            for (Path table : tables.toList()) {
                files.put(table.getFileName().toString(), Files.readString(table));
            }
        }
        assertTrue(files.get("scores.csv").contains("own_trait"));
        return files;
    }

    private static void table(String name, String... lines) throws Exception {
        Files.write(folder.resolve(name), List.of(lines));
    }

    private static void call(String... args) throws Exception {
        CalledProgram.Answer answer = CalledProgram.of(SCRIPT, args).answer();
        assertEquals(0, answer.exit(), answer.err());
    }
}
