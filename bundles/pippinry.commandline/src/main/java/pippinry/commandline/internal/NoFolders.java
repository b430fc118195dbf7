package pippinry.commandline.internal;

import java.nio.file.Path;
import java.time.Clock;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;
import pippinry.model.StoreFailed;

/** Stands in where no store bundle is there: commands that reckon run, others are told why they cannot. */
final class NoFolders implements ProgramFolders {

    @Override
    public boolean isProgram(Path folder) {
        throw missing(folder);
    }

    @Override
    public ProgramStore create(Path folder, Clock clock) {
        throw missing(folder);
    }

    @Override
    public ProgramStore open(Path folder, Clock clock) {
        throw missing(folder);
    }

    @Override
    public ProgramStore openToRead(Path folder, Clock clock) {
        throw missing(folder);
    }

    private static StoreFailed missing(Path folder) {
        return new StoreFailed(
                "Cannot open " + folder + ": this feature has no store (pippinry.store); start another feature");
    }
}
