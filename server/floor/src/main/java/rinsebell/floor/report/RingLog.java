package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.AlarmState;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Reach;
import rinsebell.floor.bell.Returned;
import rinsebell.floor.bell.Ring;
import rinsebell.floor.bell.Turns;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.floor.unit.Instants;

/**
 * What rang, for whom and when. Between two facts every bell does what its plan says, with a server or without, so the
 * facts in the order in which they were recorded tell all of it, and nothing has to be kept: no restart makes a gap.
 * It is for one thread.
 */
public final class RingLog {
    private final List<Annunciation> over = new ArrayList<>();
    private final Map<Turned, Instant> turns = new LinkedHashMap<>();
    private final Map<BellKey, Standing> standing = new LinkedHashMap<>();
    private Map<Heard, Open> open = new LinkedHashMap<>();
    private Floor floor;
    private Turns turning;
    private Instant now;

    /** A bell for somebody; for the salon as a whole where nobody is named. */
    private record Heard(BellKey round, @Nullable StaffId person) {}

    /** @param of the bells that ring as one */
    private record Open(Set<BellKey> of, Priority priority, Annunciation told) {}

    /** What rings for somebody at an instant. */
    private record Voice(Set<BellKey> of, Priority priority) {
        Voice and(Voice other) {
            var both = new HashSet<>(of);
            both.addAll(other.of);
            return new Voice(both, priority.compareTo(other.priority) >= 0 ? priority : other.priority);
        }
    }

    private RingLog(Floor floor, Instant from) {
        this.floor = floor;
        this.turning = new Turns(floor.bells());
        this.now = from;
        hear(false);
    }

    /**
     * What rang in a stretch of time.
     *
     * @param facts everything that was recorded about those days and people, by number
     * @param from what rings by then counts as beginning then
     * @param until not counted in
     */
    public static RingLog of(Collection<Fact> facts, Instant from, Instant until) {
        var before =
                facts.stream().filter(fact -> fact.recorded().isBefore(from)).toList();
        var log = new RingLog(Floor.of(before), from);
        log.take(facts.stream()
                .filter(fact ->
                        !fact.recorded().isBefore(from) && fact.recorded().isBefore(until))
                .toList());
        log.goOnUntil(until);
        return log;
    }

    /** More was recorded; by number. */
    public void take(List<Fact> facts) {
        for (var from = 0; from < facts.size(); ) {
            var to = from + 1;
            while (to < facts.size()
                    && facts.get(to).recorded().equals(facts.get(from).recorded())) {
                to++;
            }
            takeAtOnce(facts.subList(from, to));
            from = to;
        }
    }

    private void takeAtOnce(List<Fact> facts) {
        goOnUntil(facts.get(0).recorded());
        facts.forEach(this::clockIsPutRight);
        floor = floor.with(facts);
        turning = new Turns(floor.bells());
        hear(facts.stream().allMatch(Returned::canReturn));
    }

    /** Every instant moves with the clock. */
    private void clockIsPutRight(Fact fact) {
        if (fact.event() instanceof DayEvent.ClockShifted shift) {
            now = now.plus(shift.by());
            over.replaceAll(one -> one.moved(shift.by()));
            open.replaceAll((heard, one) -> new Open(one.of, one.priority, one.told.moved(shift.by())));
            standing.replaceAll((bell, one) -> one.moved(shift.by()));
            var moved = moved(turns, shift.by());
            turns.clear();
            turns.putAll(moved);
        }
    }

    private static Map<Turned, Instant> moved(Map<Turned, Instant> turns, Duration by) {
        var all = new LinkedHashMap<Turned, Instant>();
        turns.forEach((turn, at) -> all.put(new Turned(turn.bell(), turn.from().plus(by)), at.plus(by)));
        return all;
    }

    /** Nothing more was recorded before that instant. */
    public void goOnUntil(Instant end) {
        for (var next = turning.after(now); next.isPresent() && next.get().isBefore(end); next = turning.after(now)) {
            now = next.get();
            hear(false);
        }
        now = Instants.later(now, end);
    }

    /** @param corrected whether what has changed since the last look is nothing but corrections */
    private void hear(boolean corrected) {
        var voices = voices();
        var next = new LinkedHashMap<Heard, Open>();
        voices.forEach((heard, voice) -> next.put(heard, goesOn(heard, voice, before(heard, voice, voices))));
        open.values().forEach(one -> over.add(one.told.ended(now, how(one, corrected))));
        open = next;
        stand();
    }

    /** The bell before, as part of this round or of another; it is taken out of what was open. */
    private @Nullable Open before(Heard heard, Voice voice, Map<Heard, Voice> voices) {
        if (open.containsKey(heard)) {
            return open.remove(heard);
        }
        var same = open.keySet().stream()
                .filter(other -> Objects.equals(other.person, heard.person) && !voices.containsKey(other))
                .filter(other -> !Collections.disjoint(one(other).of, voice.of))
                .findFirst();
        return same.map(open::remove).orElse(null);
    }

    private Open one(Heard heard) {
        return Objects.requireNonNull(open.get(heard));
    }

    private Open goesOn(Heard heard, Voice voice, @Nullable Open before) {
        if (before == null) {
            return begins(heard, voice, now);
        }
        if (voice.priority.compareTo(before.priority) > 0) {
            over.add(before.told.ended(now, Annunciation.End.LOUDER));
            return begins(heard, voice, before.told.asked());
        }
        return new Open(voice.of, voice.priority, before.told);
    }

    private Open begins(Heard heard, Voice voice, Instant asked) {
        var told = new Annunciation(heard.round, voice.priority, heard.person, asked, now, null, null);
        return new Open(voice.of, voice.priority, told);
    }

    private Map<Heard, Voice> voices() {
        var voices = new LinkedHashMap<Heard, Voice>();
        for (var bell : floor.bells()) {
            bell.ring(now).filter(Ring::isRinging).ifPresent(ring -> {
                turns.putIfAbsent(new Turned(bell.key(), ring.from()), now);
                var voice = new Voice(Set.of(bell.key()), ring.stage().priority());
                voices.merge(new Heard(bell.round(), null), voice, Voice::and);
                people(ring.reach())
                        .forEach(person -> voices.merge(new Heard(bell.round(), person), voice, Voice::and));
            });
        }
        return voices;
    }

    private Set<StaffId> people(Reach reach) {
        return reach.everyone()
                ? floor.salon().working().stream().map(StaffMember::id).collect(Collectors.toSet())
                : reach.people();
    }

    private Annunciation.End how(Open gone, boolean corrected) {
        var states = gone.of.stream().map(this::state).collect(Collectors.toSet());
        if (states.contains(AlarmState.ACKNOWLEDGED)) {
            return Annunciation.End.SEEN;
        }
        if (states.contains(AlarmState.SHELVED)) {
            return Annunciation.End.PUT_OFF;
        }
        return states.contains(AlarmState.UNACKNOWLEDGED)
                ? Annunciation.End.ELSEWHERE
                : corrected ? Annunciation.End.RETURNED : Annunciation.End.DONE;
    }

    private AlarmState state(BellKey key) {
        return floor.bells().stream()
                .filter(bell -> bell.key().equals(key))
                .findFirst()
                .map(bell -> bell.state(now))
                .orElse(AlarmState.NORMAL);
    }

    /** A bell stands from its first ring until what it rings for is over, seen or not. */
    private void stand() {
        var states = new HashMap<BellKey, Bell>();
        floor.bells().stream()
                .filter(bell -> bell.state(now) != AlarmState.NORMAL)
                .forEach(bell -> states.put(bell.key(), bell));
        states.forEach((key, bell) ->
                standing.compute(key, (same, known) -> known == null ? Standing.since(now, bell) : known.goesOn()));
        standing.replaceAll((key, one) -> states.containsKey(key) ? one : one.goneAt(now));
    }

    /** Every ring, those that go on too, in the order in which they began. */
    public List<Annunciation> annunciations() {
        var all = new ArrayList<>(over);
        open.values().forEach(one -> all.add(one.told));
        all.sort(Comparator.comparing(Annunciation::began));
        return all;
    }

    /** Every turn that rang, with the first instant at which anybody could know of it. */
    public Map<Turned, Instant> turns() {
        return Collections.unmodifiableMap(turns);
    }

    /** Every bell that rang, from its first ring until what it rang for was over. */
    public List<Standing> standing() {
        return List.copyOf(standing.values());
    }

    /** Up to when this tells. */
    public Instant now() {
        return now;
    }
}
