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
            command.addAll(List.of("--trait", "tree.vigour", "--trait", "scab_leaf", "--trait", "mildew"));
            command.addAll(List.of("--cross", plan.family()));
            // Sheets go past trees in the ground unless they are told to go past pots.
            command.addAll(
                    plan.block().isEmpty()
                            ? List.of("--for", "pots")
                            : List.of("--block", plan.block(), "--row", plan.row()));
        }
        return command;
    }
}
