package rinsebell.demo.faults;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import rinsebell.app.desk.Answer;
import rinsebell.floor.Command;
import rinsebell.floor.salon.StaffId;

/** What {@code queue.js} and {@code send.js} do: keeps each press, and sends one after another until it is answered. */
final class Outbox {
    private static final long FIRST_WAIT = 500;
    private static final long LONGEST_WAIT = 4_000;
    private static final long NO_ANSWER = 25_000;
    private static final double AT_ONCE = 1_000;
    private static final double SLEEP = 2_000;

    private final Day day;
    private final Tablet tablet;
    private final Deque<Kept> kept = new ArrayDeque<>();
    private boolean sending;
    private long wait;
    private long attempt;

    private static final class Kept {
        final String id;
        final long act;
        final Command command;
        final @Nullable StaffId by;
        final double pressed;
        final boolean sure;
        final double steady;
        final double utmost;
        final double date;
        final int page;
        final long pressedAt;
        boolean again;
        int times;

        Kept(Day day, Tablet tablet, Command command, @Nullable StaffId by) {
            this.act = day.nextAct();
            this.id = "act-" + act;
            this.command = command;
            this.by = by;
            this.pressed = tablet.clock.now();
            this.sure = tablet.sync.isKnown();
            this.steady = tablet.steady();
            this.utmost = tablet.sync.utmost();
            this.date = tablet.date();
            this.page = tablet.page();
            this.pressedAt = day.agenda.now();
        }
    }

    Outbox(Day day, Tablet tablet) {
        this.day = day;
        this.tablet = tablet;
    }

    boolean isEmpty() {
        return kept.isEmpty();
    }

    boolean isWaiting(Command command) {
        return kept.stream().anyMatch(one -> one.command == command);
    }

    void press(Command command, @Nullable StaffId by) {
        var one = new Kept(day, tablet, command, by);
        kept.add(one);
        day.truth.pressed(one.act, tablet, tablet.expected.isDeceived() || tablet.expected.isDrowsy() || !one.sure);
        send();
    }

    /** What waits, with the longest time for which it can have waited. */
    void eachWaiting(BiConsumer<Command, Double> told) {
        kept.forEach(one -> told.accept(one.command, most(one)));
    }

    /** The page begins, or the line is back. */
    void send() {
        if (!sending && !kept.isEmpty()) {
            sending = true;
            wait = FIRST_WAIT;
            attempt();
        }
    }

    /** The page is gone; what it kept is in the browser's database. */
    void reloads() {
        sending = false;
        attempt++;
        if (!day.parts.keepsQueue()) {
            kept.clear();
        }
    }

    private void attempt() {
        var mine = ++attempt;
        var one = kept.getFirst();
        if (aged(one).isSure()) {
            post(one, mine);
        } else {
            tablet.sync.measure(told -> {
                if (mine == attempt && sending) {
                    post(one, mine);
                }
            });
        }
    }

    private void post(Kept one, long mine) {
        one.times++;
        var aged = aged(one);
        var late = one.again || aged.millis() > AT_ONCE;
        var age = late && day.parts.saysAge() ? Long.valueOf(Math.round(aged.millis())) : null;
        var letter = new Letter(
                tablet,
                day.parts.idOfAgain(one.id, one.times),
                one.act,
                one.command,
                one.by,
                age,
                aged.isSure(),
                tablet.sync.isKnown() ? Long.valueOf(Math.round(tablet.clock.now())) : null,
                one.pressedAt);
        tablet.inSteady(NO_ANSWER, () -> fails(mine));
        tablet.post(letter, mine);
    }

    /** How long ago something was pressed, and whether that is sure. */
    private record Aged(double millis, boolean isSure) {}

    private double most(Kept one) {
        if (one.page == tablet.page()) {
            return tablet.sync.utmost() - one.utmost;
        }
        return one.sure ? Math.max(byDate(one), bySalon(one)) : Double.POSITIVE_INFINITY;
    }

    private double bySalon(Kept one) {
        return one.sure && tablet.sync.isKnown() ? tablet.clock.now() - one.pressed : -1;
    }

    private double byDate(Kept one) {
        return Math.max(0, tablet.date() - one.date);
    }

    private Aged aged(Kept one) {
        var salon = bySalon(one);
        if (one.page != tablet.page()) {
            return new Aged(salon < 0 ? byDate(one) : salon, salon >= 0);
        }
        var longest = most(one);
        var steady = tablet.steady() - one.steady;
        if (longest - steady <= SLEEP) {
            return new Aged(steady, true);
        }
        if (salon < 0 || !day.parts.tellsHandFromSleep()) {
            return new Aged(longest, !day.parts.tellsHandFromSleep());
        }
        if (salon - steady <= SLEEP) {
            return new Aged(steady, true);
        }
        return new Aged(Math.min(salon, longest), Math.abs(salon - longest) <= SLEEP);
    }

    /** No answer says nothing about whether it arrived. */
    void fails(long which) {
        if (which != attempt || !sending) {
            return;
        }
        attempt++;
        if (day.parts.sendsAgain()) {
            kept.getFirst().again = true;
        } else {
            kept.removeFirst();
        }
        wait = Math.min(wait * 2, LONGEST_WAIT);
        var next = attempt;
        tablet.inSteady(wait, () -> goesOn(next));
    }

    private void goesOn(long which) {
        if (which == attempt && sending) {
            sending = false;
            send();
        }
    }

    void answered(long which, Letter letter, Answer answer) {
        if (which != attempt || !sending) {
            return;
        }
        if (answer instanceof Answer.NotKnown) {
            fails(which);
            return;
        }
        attempt++;
        if (kept.removeFirst().again) {
            tablet.sync.measureAnew(told -> {});
        } else {
            tablet.sync.measureIfOwed();
        }
        if (!(answer instanceof Answer.Decided decided) || !decided.outcome().accepted()) {
            tablet.ringing.refused();
        }
        day.truth.settled(letter.act());
        sending = false;
        send();
    }

    long attemptNumber() {
        return attempt;
    }
}
