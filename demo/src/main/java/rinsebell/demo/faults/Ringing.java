package rinsebell.demo.faults;

import java.util.LinkedHashSet;
import java.util.Set;
import rinsebell.floor.Command;

/** What {@code ring.js} does: decides from the plan and the salon's time what sounds, four times a second. */
final class Ringing {
    private static final long LOOK = 250;

    private final Day day;
    private final Tablet tablet;
    private final long phase;
    private final Quiet quiet;
    private Set<Turn.Key> sounding = Set.of();
    private long nextLook = Long.MAX_VALUE;
    private Plan known;

    Ringing(Day day, Tablet tablet, Plan loaded) {
        this.day = day;
        this.tablet = tablet;
        this.phase = day.dice.below((int) LOOK);
        this.quiet = new Quiet(day.parts);
        this.known = loaded;
    }

    Set<Turn.Key> sounding() {
        return sounding;
    }

    /** Something has changed on which it hangs: the next look comes at its usual time. */
    void moved() {
        lookAt(day.agenda.now());
    }

    /** What was pressed on this device is quiet on it at once. */
    void pressed(Command command) {
        quiet.note(command, tablet.clock.now(), tablet.sync.utmost());
        moved();
    }

    /** The page begins: what was pressed on the one before, and waits, is quiet too. */
    void begins() {
        recall();
        moved();
    }

    /** What does not count has quieted nothing. */
    void refused() {
        forget();
        moved();
    }

    private void forget() {
        quiet.forget();
        recall();
    }

    private void recall() {
        var now = tablet.clock.now();
        tablet.outbox.eachWaiting((command, age) -> quiet.note(command, now - age, tablet.sync.utmost() - age));
    }

    /** Nothing sounds while the device sleeps. */
    void sleeps() {
        nextLook = Long.MAX_VALUE;
        sounding = Set.of();
    }

    private void lookAt(long when) {
        var steady = Math.round(tablet.steady()) + when - day.agenda.now();
        var tick = when + Math.floorMod(phase - steady, LOOK);
        if (tick < nextLook) {
            nextLook = tick;
            day.agenda.at(tick, this::lookIfNext);
        }
    }

    private void lookIfNext() {
        if (nextLook == day.agenda.now() && tablet.isAwake() && tablet.ringing == this) {
            nextLook = Long.MAX_VALUE;
            look();
        }
    }

    private void look() {
        var plan = tablet.feed.shown();
        if (plan != known) {
            known = plan;
            if (!tablet.feed.isAlone()) {
                forget();
            }
        }
        var at = tablet.clock.now();
        sound(plan, at);
        lookAgain(plan, at);
    }

    private void sound(Plan plan, double at) {
        var now = new LinkedHashSet<Turn.Key>();
        plan.ringing(tablet.ear, (long) at, turn -> {
            if (quiet.isEmpty() || !quiet.is(turn, plan, at, tablet.sync.utmost())) {
                now.add(turn.key());
            }
        });
        var before = sounding;
        sounding = now;
        now.stream().filter(key -> !before.contains(key)).forEach(tablet.expected::starts);
        if (!now.containsAll(before)) {
            tablet.expected.stops();
        }
    }

    private void lookAgain(Plan plan, double at) {
        if (tablet.clock.isSlewing() || !quiet.isEmpty()) {
            lookAt(day.agenda.now() + 1);
            return;
        }
        var next = plan.nextAfter((long) at);
        if (next != Long.MAX_VALUE) {
            lookAt(day.agenda.now() + Math.max(1, (long) Math.ceil(next - at)));
        }
    }
}
