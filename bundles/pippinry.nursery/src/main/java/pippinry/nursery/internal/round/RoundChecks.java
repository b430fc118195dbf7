package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.record.Done;
import pippinry.model.record.Kinds;

/** Questions to the branches of a spring. */
public final class RoundChecks {

    private RoundChecks() {}

    /** Pollinated by hand on one day only, whatever came of it. */
    public static List<Branch> onePass(Program program, int year) {
        return ofYear(program, year)
                .filter(branch -> branch.isHand() && branch.passes() == 1)
                .toList();
    }

    /** Pollinated or bagged, but with no visit since petal fall: not looked at after the bag should have come off. */
    public static List<Branch> notSeenSincePetalFall(Program program, int year, LocalDate today, long bagsOffDays) {
        return ofYear(program, year)
                .filter(branch -> !branch.isLost())
                .filter(branch -> Stream.of(Done.BAG_OFF, Done.SET, Done.JUNE, Done.HARVEST)
                        .noneMatch(branch::was))
                .filter(branch -> branch.tag().setFruits().isEmpty()
                        && branch.tag().harvestedFruits().isEmpty())
                .filter(branch -> branch.lastPass()
                        .or(branch::first)
                        .filter(day -> day.plusDays(bagsOffDays).isBefore(today))
                        .isPresent())
                .toList();
    }

    private static Stream<Branch> ofYear(Program program, int year) {
        return program.table(Kinds.POLLINATIONS).stream()
                .map(tag -> Branch.of(program, tag))
                .filter(branch ->
                        branch.first().filter(day -> day.getYear() == year).isPresent());
    }
}
