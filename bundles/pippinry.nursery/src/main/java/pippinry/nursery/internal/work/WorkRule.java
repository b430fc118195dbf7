package pippinry.nursery.internal.work;

import java.util.stream.Stream;
import pippinry.model.ask.DueTask;

/** Finds one sort of work in the records. What the records show as done is not found any more. */
public interface WorkRule {

    /** Never changes: tasks are marked as done under it. */
    String name();

    /** Tasks of any day near the look's; the caller picks those of the days asked for. */
    Stream<DueTask> find(Look look);
}
