package pippinry.nursery.internal.round;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Loss;

/** How many flowers and fruits, seeds, seedlings and trees went to which cause. */
public final class LossesByCause {

    /** A cause and what it took; a loss whose number nobody wrote down counts as one. */
    public record Cause(String cause, int branches, int lots, int others) {

        public int all() {
            return branches + lots + others;
        }
    }

    private LossesByCause() {}

    /** The worst cause first. */
    public static List<Cause> of(Program program) {
        Map<String, Cause> causes = new TreeMap<>();
        program.table(Kinds.LOSSES).stream()
                .map(loss -> cause(program, loss))
                .forEach(cause -> causes.merge(cause.cause(), cause, LossesByCause::sum));
        return causes.values().stream()
                .sorted((one, other) -> Integer.compare(other.all(), one.all()))
                .toList();
    }

    private static Cause cause(Program program, Loss loss) {
        int number = loss.number().orElse(1);
        String subject = loss.subject().text();
        boolean branch = program.table(Kinds.POLLINATIONS).find(subject).isPresent();
        boolean lot = !branch && program.table(Kinds.SEEDLOTS).find(subject).isPresent();
        return new Cause(
                loss.cause().isBlank() ? "not written down" : loss.cause(),
                branch ? number : 0,
                lot ? number : 0,
                branch || lot ? 0 : number);
    }

    private static Cause sum(Cause one, Cause other) {
        return new Cause(
                one.cause(),
                one.branches() + other.branches(),
                one.lots() + other.lots(),
                one.others() + other.others());
    }
}
