package pippinry.exchange.internal;

import java.io.IOException;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.model.Program;
import pippinry.model.ProgramStore;

/** One form in which a program goes out. */
interface Outgoing {

    /** @param program the store's, or as it stood on the day that {@code asof} named */
    Answer write(Call call, ProgramStore store, Program program, Destination out) throws IOException, CallRefused;
}
