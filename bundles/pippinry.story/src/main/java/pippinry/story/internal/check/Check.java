package pippinry.story.internal.check;

import java.util.function.Consumer;
import pippinry.model.Program;

/** One thing that is asked of every program. */
interface Check {

    void look(Program program, Consumer<Finding> found);
}
