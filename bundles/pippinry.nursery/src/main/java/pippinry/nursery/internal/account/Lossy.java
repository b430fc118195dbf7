package pippinry.nursery.internal.account;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is usual in this program on the way from flower to tree, and who fell behind it. */
public final class Lossy {

    private static final double WORTH_TELLING = 0.8;

    private final List<FamilyAccount> whole;
    private final Map<Step, Double> usual;

    private Lossy(List<FamilyAccount> whole, Map<Step, Double> usual) {
        this.whole = whole;
        this.usual = usual;
    }

    public static Lossy of(List<FamilyAccount> accounts) {
        List<FamilyAccount> whole = accounts.stream().filter(Lossy::isWhole).toList();
        return new Lossy(whole, FamilyAccount.usualShares(accounts));
    }

    private static boolean isWhole(FamilyAccount account) {
        return Arrays.stream(Step.values())
                .allMatch(step -> account.number(step).isPresent());
    }

    /** How many crosses were counted at every station. */
    public int whole() {
        return whole.size();
    }

    /** Sums over those; empty if there is none. */
    public Map<Step, Integer> sums() {
        Map<Step, Integer> sums = new EnumMap<>(Step.class);
        whole.forEach(
                account -> account.counts().forEach((step, count) -> sums.merge(step, count.number(), Integer::sum)));
        return sums;
    }

    /** What of the station before reaches this one over all crosses. */
    public double usual(Step step) {
        return usual.getOrDefault(step, Double.NaN);
    }

    /** Where the cross fell furthest behind; empty if it did nowhere by a fifth. */
    public Optional<Step> worst(FamilyAccount account) {
        return account.worst(usual, WORTH_TELLING);
    }
}
