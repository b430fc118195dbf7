package pippinry.labels.internal.entry;

import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.ProgramStore;

/** Where entries go: each row is on disk when this returns, so that nothing is lost with the power. */
public interface Filing {

    Program now();

    /** @return number of the edit */
    long file(Edit edit) throws EditRefused;

    void takeBack(long edit) throws EditRefused;

    /** Right into a store. */
    static Filing in(ProgramStore store, String author) {
        return new Filing() {
            @Override
            public Program now() {
                return store.now();
            }

            @Override
            public long file(Edit edit) throws EditRefused {
                return store.apply(edit).number();
            }

            @Override
            public void takeBack(long edit) throws EditRefused {
                store.takeBack(edit, author);
            }
        };
    }
}
