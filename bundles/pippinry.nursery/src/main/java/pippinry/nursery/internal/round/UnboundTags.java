package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Kinds;
import pippinry.model.record.PollinationKind;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/** A neutral tag that was hung is bound to cross, limb and pollen lot the same evening; until then it stands here. */
public final class UnboundTags implements WorkRule {

    @Override
    public String name() {
        return "bind-tag";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return look.program().table(Kinds.POLLINATIONS).stream()
                .filter(tag -> tag.cross().isEmpty())
                .filter(tag -> tag.kind().filter(UnboundTags::needsNoCross).isEmpty())
                .map(tag -> task(look, Branch.of(look.program(), tag)));
    }

    private static boolean needsNoCross(PollinationKind kind) {
        return List.of(PollinationKind.OPEN, PollinationKind.CONTROL_OPEN, PollinationKind.CONTROL_NO_POLLEN)
                .contains(kind);
    }

    private DueTask task(Look look, Branch branch) {
        LocalDate hung = branch.first().orElse(look.today());
        String did = branch.visits().stream()
                .flatMap(visit -> visit.did().stream())
                .map(done -> done.word().replace('_', ' '))
                .distinct()
                .collect(Collectors.joining(", "));
        return new DueTask(
                branch.tag().tag().text(),
                name(),
                hung,
                hung,
                "Bind the tag " + branch.tag().tag() + " to its cross, limb and pollen lot",
                did.isEmpty() ? "nothing was noted under it yet" : "noted so far: " + did,
                Optional.empty(),
                List.of(branch.tag().tag().text()));
    }
}
