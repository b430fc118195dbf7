package pippinry.model;

import java.nio.file.Path;
import java.time.Clock;
import org.osgi.annotation.versioning.ProviderType;

/** Opens programs in their folders. */
@ProviderType
public interface ProgramFolders {

    /** Whether the folder holds a program. */
    boolean isProgram(Path folder);

    /**
     * Makes an empty program in a folder that is empty or not there.
     *
     * @param clock stamps the edits
     * @throws StoreFailed if the folder holds anything or cannot be written
     */
    ProgramStore create(Path folder, Clock clock);

    /**
     * Opens the program to read and change it.
     *
     * @throws StoreFailed if there is none, it was written by a newer version, or another process has it open (and who)
     */
    ProgramStore open(Path folder, Clock clock);

    /** Opens the program to read it only; another process may have it open at the same time. */
    ProgramStore openToRead(Path folder, Clock clock);
}
