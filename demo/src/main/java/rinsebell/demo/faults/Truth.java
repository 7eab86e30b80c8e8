package rinsebell.demo.faults;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rinsebell.app.desk.Answer;
import rinsebell.app.desk.Outcome;
import rinsebell.app.desk.Snapshot;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.WorkEvent;

/** What really happened in a day, told by whoever stands outside of it, against which everything is held. */
final class Truth {
    private static final int FOLD_EVERY = 8;
    private static final long CLOCK_MAY_MISS = 30;
    private static final long SECOND = 1_000;

    private final Day day;
    private final Map<Long, Fact> facts = new TreeMap<>();
    private final Map<Long, Fact> promised = new HashMap<>();
    private final Map<String, Long> acts = new HashMap<>();
    private final Map<Long, String> counted = new HashMap<>();
    private final Map<String, Outcome> answers = new HashMap<>();
    private final Map<Long, Pressed> open = new TreeMap<>();
    private final Map<Long, Pressed> pressed = new HashMap<>();
    private long ahead;
    private int steps;

    /**
     * @param ahead how far the salon's time was ahead, as the device had been told
     * @param unsure whether the device itself knew that it only guessed the time, or was deceived
     */
    private record Pressed(long at, long ahead, boolean unsure) {}

    Truth(Day day) {
        this.day = day;
    }

    /** How far the salon's time is ahead of true time, by the rules alone. */
    long ahead() {
        return ahead;
    }

    /**
     * A process starts: within one start of the machine time has simply gone on; after a new one only the wall tells. A
     * clock that was put right is, even when the process had died before it could say so.
     */
    void starts(Server server, Collection<Fact> read) {
        var unsaid = read.stream()
                .filter(fact -> !facts.containsKey(fact.seq()))
                .mapToLong(Truth::putRightBy)
                .sum();
        ahead += unsaid;
        var mark = server.lastMark();
        var now = day.agenda.now();
        var wall = server.machine.wallAhead();
        if (mark == null) {
            ahead = wall;
        } else if (mark.bootId().equals(server.machine.bootId())) {
            ahead = Math.abs(ahead - wall) <= SECOND ? wall : ahead;
        } else {
            ahead = Math.max(mark.salon().toEpochMilli() + unsaid - now, wall);
        }
    }

    private static long putRightBy(Fact fact) {
        return fact.event() instanceof DayEvent.ClockConfirmed confirmed
                ? confirmed.by().toMillis()
                : 0;
    }

    void shifted(Duration by) {
        ahead += by.toMillis();
        promised.clear();
    }

    void clock(Instant salon) {
        var off = salon.toEpochMilli() - day.agenda.now() - ahead;
        Broken.unless(
                Math.abs(off) <= CLOCK_MAY_MISS,
                Rule.CLOCK_HOLDS,
                () -> "the salon's clock is " + off + " ms ahead of what it should show");
    }

    /** Somebody has pressed something. */
    void pressed(long act, Tablet on, boolean unsure) {
        var one = new Pressed(day.agenda.now(), on.expected.ahead(), unsure);
        open.put(act, one);
        pressed.put(act, one);
    }

    void handed(Letter letter) {
        acts.put(letter.id(), letter.act());
    }

    /** These have become durable. */
    void saved(List<Fact> more) {
        more.forEach(fact -> facts.put(fact.seq(), fact));
    }

    /** What somebody was told before it was durable. */
    void promised(Collection<Fact> more) {
        more.forEach(fact -> promised.put(fact.seq(), fact));
    }

    void answered(Letter letter, Answer answer) {
        if (!(answer instanceof Answer.Decided decided) || !decided.outcome().accepted()) {
            return;
        }
        var before = answers.putIfAbsent(letter.id(), decided.outcome());
        Broken.unless(
                before == null || before.equals(decided.outcome()),
                Rule.ANSWERED_THE_SAME,
                () -> letter.id() + " was answered " + before + " and now " + decided.outcome());
        countsOnce(letter.id(), letter.act());
        decided.outcome().facts().forEach(seq -> isOnTheFloor(letter, seq, decided.floor()));
    }

    private void countsOnce(String id, long act) {
        var other = counted.putIfAbsent(act, id);
        Broken.unless(
                other == null || other.equals(id),
                Rule.COUNTS_ONCE,
                () -> "act " + act + " counts as " + other + " and as " + id);
    }

    private void isOnTheFloor(Letter letter, long seq, Floor floor) {
        var fact = facts.get(seq);
        Broken.unless(
                fact != null,
                Rule.ANSWERED_IS_KEPT,
                () -> letter.id() + " was answered fact " + seq + ", which is not saved");
        if (fact != null && letter.from() != null && isTimed(fact)) {
            happenedWhenPressed(letter, fact);
        }
    }

    private static boolean isTimed(Fact fact) {
        return fact.event() instanceof WorkEvent || fact.event() instanceof LookEvent;
    }

    private void happenedWhenPressed(Letter letter, Fact fact) {
        var one = pressed.get(letter.act());
        if (one == null || one.unsure || fact.unsure() || one.ahead > ahead) {
            return;
        }
        var off = fact.happened().toEpochMilli() - one.at - one.ahead;
        Broken.unless(
                Math.abs(off) <= 2 * SECOND || Math.abs(off + one.ahead - ahead) <= 2 * SECOND,
                Rule.HAPPENED_WHEN_PRESSED,
                () -> letter.id() + " is said to have happened " + off + " ms after it was pressed");
    }

    void settled(long act) {
        open.remove(act);
    }

    /** A process has started on what was left. */
    void started(Snapshot loaded, List<Ledger.Entry> read) {
        var kept = new TreeMap<Long, Fact>();
        var ids = new HashMap<Long, String>();
        for (var entry : read) {
            entry.facts().forEach(fact -> kept.put(fact.seq(), fact));
            var act = acts.get(entry.id());
            var other = act == null ? null : ids.putIfAbsent(act, entry.id());
            Broken.unless(
                    other == null, Rule.COUNTS_ONCE, () -> "act " + act + " counts as " + other + " and " + entry.id());
        }
        facts.forEach((seq, fact) -> Broken.unless(
                fact.equals(kept.get(seq)), Rule.ANSWERED_IS_KEPT, () -> "lost: " + fact + ", but " + kept.get(seq)));
        promised.forEach((seq, fact) ->
                Broken.unless(kept.containsKey(seq), Rule.ANSWERED_IS_KEPT, () -> "answered and lost: " + fact));
        facts.putAll(kept);
        isItsFacts(loaded);
    }

    /** After each turn of the desk. */
    void step(Snapshot snapshot) {
        if (++steps % FOLD_EVERY == 0) {
            isItsFacts(snapshot);
        }
    }

    private void isItsFacts(Snapshot snapshot) {
        var floor = snapshot.floor();
        var again = Floor.of(floor.facts()).numberedFrom(floor.lastSeq());
        Broken.unless(again.equals(floor), Rule.FLOOR_IS_ITS_FACTS, () -> "the floor is not the fold of its facts");
        Broken.unless(
                again.with(snapshot.alarms()).bells().equals(snapshot.bells()),
                Rule.FLOOR_IS_ITS_FACTS,
                () -> "the bells are not those of the facts");
        floor.facts()
                .forEach(fact -> Broken.unless(
                        fact.equals(facts.getOrDefault(fact.seq(), fact)),
                        Rule.FLOOR_IS_ITS_FACTS,
                        () -> "the floor has " + fact + " where it was " + facts.get(fact.seq())));
    }

    /** At the end, when nothing has failed for a while. */
    void ends() {
        Broken.unless(open.isEmpty(), Rule.PRESS_ARRIVES, () -> "never answered: acts " + open.keySet());
        for (var tablet : day.tablets) {
            Broken.unless(
                    tablet.feed.isLive() && tablet.feed.shown() == day.shownNow(),
                    Rule.SCREENS_COME_BACK,
                    () -> tablet.name + " is not up to date");
        }
    }
}
