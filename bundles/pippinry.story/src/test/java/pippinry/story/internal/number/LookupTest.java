package pippinry.story.internal.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.model.Program;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Kinds;
import pippinry.story.internal.Growing;

class LookupTest {

    private final Program program = new Growing()
            .with(Kinds.GENOTYPES, "code", "FIE", "name", "Fiesta")
            .with(Kinds.GENOTYPES, "code", "REDX", "name", "Red one")
            .with(Kinds.GENOTYPES, "code", "26-014-073")
            .with(Kinds.GENOTYPES, "code", "26-014-031")
            .with(Kinds.PLANTS, "tag", "26-014-073A", "genotype", "26-014-073")
            .with(Kinds.BLOCKS, "block", "A")
            .with(Kinds.NAMES, "subject", "26-014-073", "name", "FF 3", "kind", "old tag")
            .with(Kinds.NAMES, "subject", "26-014-031", "name", "Red one")
            .with(Kinds.NEVERGIVEN, "number", "26-014-039", "reason", "the check character of its copy A would be *")
            .program();

    @ParameterizedTest
    @CsvSource({
        "26-014-073, 26-014-073, ''",
        "26-014-073=Y, 26-014-073, ''",
        "26-014-073=y, 26-014-073, ''",
        " 26-014-073 , 26-014-073, ''",
        "26-014-073a, 26-014-073A, ''",
        "fie, FIE, ''",
        "Fiesta, FIE, name",
        "FIESTA, FIE, name",
        "ff 3, 26-014-073, old tag",
        "A/7/9, A/7/9, ''",
    })
    void aNumberANameAnOldTagOrAPlaceIsFound(String typed, String key, String by) {
        Looked.Found found = (Looked.Found) new Lookup(program).look(typed);
        assertEquals(key, found.key());
        assertEquals(by, found.by());
    }

    @Test
    void aWrongCheckIsNotFoundThoughTheNumberIsOnFile() {
        Looked.Missing missing = (Looked.Missing) new Lookup(program).look("26-014-073=X");
        assertEquals(
                "the check character does not fit: 26-014-073 has Y and not X, so one sign is wrong",
                missing.because());
        assertEquals("26-014-073", missing.nearest().get(0));
    }

    @Test
    void aSwapIsFoundOutByItsCheck() {
        String typed = "26-014-013=" + CheckCharacter.of("26-014-031");
        Looked.Missing missing = (Looked.Missing) new Lookup(program).look(typed);
        assertEquals("26-014-031", missing.nearest().get(0));
    }

    @Test
    void anUnknownNumberIsAnsweredWithTheNearest() {
        Looked.Missing missing = (Looked.Missing) new Lookup(program).look("26-014-078");
        assertEquals("it is not on file", missing.because());
        assertEquals(List.of("26-014-073", "26-014-073A"), missing.nearest().subList(0, 2));
        assertTrue(missing.nearest().size() <= 5);
    }

    @Test
    void aNumberThatWasSkippedSaysSo() {
        Looked.Missing missing = (Looked.Missing) new Lookup(program).look("26-014-039");
        assertEquals("this number was never given: the check character of its copy A would be *", missing.because());
    }

    @Test
    void aNameOfSeveralIsAnsweredWithAllOfThem() {
        assertEquals(new Looked.Several("red one", List.of("REDX", "26-014-031")), new Lookup(program).look("red one"));
    }

    @Test
    void aGenotypesOwnNumberIsTheGenotypeNotItsPlant() {
        assertEquals(
                new Looked.Found(Optional.of(Kinds.GENOTYPES), "26-014-073", ""),
                new Lookup(program).look("26-014-073"));
    }
}
