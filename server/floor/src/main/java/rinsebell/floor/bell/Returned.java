package rinsebell.floor.bell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.Correction;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.SalonEvent;

/**
 * A bell that rang, that nobody had seen, and that is gone without anybody having done what it asked for: a fact was
 * withdrawn or set back, or the house's numbers or directions changed. It is silent and listed until somebody has seen it
 * ({@link AlarmState#RETURNED_UNACKNOWLEDGED}).
 *
 * @param bell as it rang last
 * @param stage how it rang last
 * @param gone when it went
 * @param by the number of the fact by which it went
 */
public record Returned(Bell bell, Stage stage, Instant gone, long by) {

    /** Those of today, on the floor as it stands; told from the facts, so a restart forgets none. */
    public static List<Returned> of(Floor floor, Instant now) {
        var found = List.<Returned>of();
        var facts = floor.facts();
        var told = Floor.EMPTY;
        var from = 0;
        for (var i = 0; i < facts.size(); i++) {
            var fact = facts.get(i);
            if (canReturn(fact) && isOfToday(fact, floor, now)) {
                var before = told.with(facts.subList(from, i));
                told = before.with(List.of(fact));
                from = i + 1;
                found = and(found, by(fact, before.bells(), told.bells()));
            }
        }
        return found.isEmpty() ? found : left(found, floor, floor.bells(), now);
    }

    private static boolean isOfToday(Fact fact, Floor floor, Instant now) {
        return floor.salon().dayOf(fact.recorded()).equals(floor.salon().dayOf(now));
    }

    /** Whether a fact can end bells without anybody having answered them. */
    public static boolean canReturn(Fact fact) {
        return fact.event() instanceof Correction
                || fact.event() instanceof SalonEvent.PolicySet
                || fact.event() instanceof SalonEvent.DirectionsRevised;
    }

    /** Those that one fact ended, by the bells before it and after. */
    public static List<Returned> by(Fact fact, List<Bell> before, List<Bell> after) {
        var at = fact.recorded();
        return before.stream()
                .filter(bell -> bell.isRinging(at) && state(bell.key(), after, at) == AlarmState.NORMAL)
                .flatMap(bell -> bell.at(at).map(stage -> new Returned(bell, stage, at, fact.seq())).stream())
                .toList();
    }

    /** Both; of one bell the later. */
    public static List<Returned> and(Collection<Returned> earlier, Collection<Returned> later) {
        var both = new ArrayList<>(earlier);
        both.removeIf(one -> later.stream().anyMatch(other -> other.key().equals(one.key())));
        both.addAll(later);
        return List.copyOf(both);
    }

    /** Those that are still to be listed: neither seen since, nor ringing anew. */
    public static List<Returned> left(List<Returned> found, Floor floor, List<Bell> bells, Instant now) {
        return found.stream()
                .filter(one -> state(one.key(), bells, now) == AlarmState.NORMAL)
                .filter(one -> !one.isSeen(floor))
                .toList();
    }

    private static AlarmState state(BellKey key, List<Bell> bells, Instant at) {
        return find(key, bells).map(bell -> bell.state(at)).orElse(AlarmState.NORMAL);
    }

    private static Optional<Bell> find(BellKey key, List<Bell> bells) {
        return bells.stream().filter(bell -> bell.key().equals(key)).findFirst();
    }

    /** By numbers, not by time: the clock may have been put right in between. */
    private boolean isSeen(Floor floor) {
        return floor.facts().stream()
                .filter(fact -> fact.seq() > by)
                .anyMatch(fact -> fact.event() instanceof BellAcknowledged seen
                        && seen.bell().equals(key())
                        && floor.stands(fact));
    }

    public BellKey key() {
        return bell.key();
    }
}
