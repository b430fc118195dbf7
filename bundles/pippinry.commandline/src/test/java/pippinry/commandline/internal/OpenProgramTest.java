package pippinry.commandline.internal;

import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pippinry.commandline.CallRefused;
import pippinry.model.Program;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;

class OpenProgramTest {

    private static final Path FOLDER = Path.of("orchard");

    private final ProgramFolders folders = mock(ProgramFolders.class);
    private final ProgramStore writing = mock(ProgramStore.class);
    private final ProgramStore reading = mock(ProgramStore.class);
    private final OpenProgram program =
            new OpenProgram(Optional.of(FOLDER), Optional.empty(), folders, Clock.systemUTC());

    @BeforeEach
    void giveOneStoreForEachUse() {
        when(folders.open(any(), any())).thenReturn(writing);
        when(folders.openToRead(any(), any())).thenReturn(reading);
        when(reading.readOnly()).thenReturn(true);
        when(reading.now()).thenReturn(Program.empty());
    }

    @Test
    void anInnerCallUsesTheOpenStoreAndLeavesItOpen() throws Exception {
        program.write();
        try (OpenProgram inner = program.within(null, Optional.empty())) {
            assertSame(writing, inner.write());
        }
        verify(writing, never()).close();
        program.close();
        verify(writing).close();
    }

    @Test
    void theSameFolderWrittenInAnotherWayIsTheSameProgram() throws Exception {
        program.write();
        try (OpenProgram inner = program.within(Path.of("x/../orchard").toAbsolutePath(), Optional.empty())) {
            assertSame(writing, inner.write());
        }
    }

    @Test
    void anInnerCallThatWritesDoesNotGetTheStoreThatOnlyReads() throws Exception {
        program.read();
        try (OpenProgram inner = program.within(null, Optional.empty())) {
            assertSame(writing, inner.write());
        }
        verify(writing).close();
        verify(reading, never()).close();
    }

    @Test
    void thePastIsNotChanged() {
        OpenProgram past = program.within(null, Optional.of(LocalDate.parse("2020-06-01")));
        assertThrows(CallRefused.class, past::write);
    }

    @Test
    void aCallThatNamesNoProgramIsAskedForOne() {
        OpenProgram none = new OpenProgram(Optional.empty(), Optional.empty(), folders, Clock.systemUTC());
        assertThrows(CallRefused.class, none::read);
    }
}
