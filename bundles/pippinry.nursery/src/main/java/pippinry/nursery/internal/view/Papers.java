package pippinry.nursery.internal.view;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pippinry.nursery.internal.start.SeedlingsOnHand;

/** Which command prints what a form leaves in a person's hand. */
final class Papers {

    private static final String SHEET = "A4-21";

    private Papers() {}

    /** @param what {@code tags} or {@code sheets} */
    static List<String> command(SeedlingsOnHand.Plan plan, String what, Path file) {
        List<String> command = new ArrayList<>(List.of(what, "--out", file.toString()));
        if (what.equals("tags")) {
            command.addAll(List.of("--for", "plants", "--sheet", SHEET, "--cross", plan.family()));
        } else {
            command.addAll(List.of("--trait", "vigour", "--trait", "scab_leaf", "--trait", "mildew"));
            if (!plan.block().isEmpty()) {
                command.addAll(List.of("--block", plan.block()));
            }
        }
        return command;
    }
}
