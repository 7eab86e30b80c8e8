package rinsebell.floor;

import java.time.Duration;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rinsebell.floor.bowl.DayEvent;

/**
 * Applies the corrections among the facts of a stream and sorts what is left by (happened, seq). The order in which the
 * facts are handed in does not matter.
 */
final class Corrected {
    /** In the order in which they happened; of two at once the one recorded first. */
    static final Comparator<Fact> BY_HAPPENED =
            Comparator.comparing(Fact::happened).thenComparingLong(Fact::seq);

    private static final Comparator<Fact> NEWEST_FIRST =
            Comparator.comparingLong(Fact::seq).reversed();

    private final Set<Long> withdrawn = new HashSet<>();
    private final Map<Long, Fact> setBacks = new HashMap<>();

    private Corrected(Collection<Fact> facts) {
        // A correction has a higher number than what it names, so going down from the newest knows about every
        // correction, and whether it was itself withdrawn, before it meets the fact that is corrected.
        facts.stream().sorted(NEWEST_FIRST).forEach(this::note);
    }

    private void note(Fact fact) {
        if (withdrawn.contains(fact.seq())) {
            return;
        }
        if (fact.event() instanceof Correction.Withdrawn withdrawal) {
            withdrawn.add(withdrawal.of());
        } else if (fact.event() instanceof Correction.SetBack setBack) {
            setBacks.putIfAbsent(setBack.of(), fact);
        }
    }

    /**
     * The facts that stand, at the times at which they happened, in their order. Corrections themselves are left out.
     *
     * @param shifts every shift of the wall clock that stands: facts with a lower number move by it
     */
    static List<Fact> of(Collection<Fact> facts, List<Fact> shifts) {
        var corrected = new Corrected(facts);
        return facts.stream()
                .filter(fact -> !corrected.withdrawn.contains(fact.seq()) && !(fact.event() instanceof Correction))
                .map(fact -> corrected.atItsTime(fact, shifts))
                .sorted(BY_HAPPENED)
                .toList();
    }

    /** Whether the fact of that number, which may be a correction, was not withdrawn. */
    static boolean stands(Collection<Fact> facts, long seq) {
        return !new Corrected(facts).withdrawn.contains(seq);
    }

    private Fact atItsTime(Fact fact, List<Fact> shifts) {
        var moved = fact.moved(shift(fact.seq(), shifts));
        var setBack = setBacks.get(fact.seq());
        return setBack != null && setBack.event() instanceof Correction.SetBack by
                ? moved.at(by.to().plus(shift(setBack.seq(), shifts)))
                : moved;
    }

    /**
     * How far the clock was put right since the fact of that number. What is not on disk has a number below zero, which
     * does not tell when it was recorded: it stays at its time, and whoever keeps it moves it.
     */
    private static Duration shift(long seq, List<Fact> shifts) {
        var by = Duration.ZERO;
        if (seq < 0) {
            return by;
        }
        for (var shift : shifts) {
            if (shift.seq() > seq && shift.event() instanceof DayEvent.ClockShifted clock) {
                by = by.plus(clock.by());
            }
        }
        return by;
    }
}
