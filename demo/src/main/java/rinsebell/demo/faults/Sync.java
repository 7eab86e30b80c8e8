package rinsebell.demo.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** What {@code sync.js} does: asks the server for the time, and looks for sleep. */
final class Sync {
    private static final long EVERY = 60_000;
    private static final long PATIENCE = 3_000;
    private static final long WAKE_PATIENCE = 600;
    private static final int QUICK = 4;
    private static final double JUMP = 500;
    private static final double LATE_BEAT = 800;

    private final Day day;
    private final Tablet tablet;
    private final TabletClock clock;
    private final List<Consumer<Boolean>> waiting = new ArrayList<>();
    private double gapSeen;
    private double slept;
    private double forwards;
    private int looks;
    private boolean owed;
    private boolean heard;
    private int asked;
    private int measurement;

    Sync(Day day, Tablet tablet, TabletClock clock) {
        this.day = day;
        this.tablet = tablet;
        this.clock = clock;
        gapSeen = gap();
    }

    private double gap() {
        return tablet.date() - tablet.steady();
    }

    /** Whether the clock tells what the server said, rather than a guess, or what was right before a sleep. */
    boolean isKnown() {
        return clock.isSure() && slept == 0 && Math.abs(gap() - gapSeen) < JUMP;
    }

    /** The steady clock, with each step forwards of the device's time of day taken for sleep. */
    double utmost() {
        return tablet.steady() + forwards + Math.max(0, gap() - gapSeen);
    }

    void start() {
        measure(told -> {});
        everyMinute(tablet.page());
    }

    private void everyMinute(int page) {
        tablet.inSteady(EVERY, () -> {
            if (page == tablet.page()) {
                routine |= waiting.isEmpty();
                begin(told -> {});
                everyMinute(page);
            }
        });
    }

    private boolean routine;

    /** One measurement at a time: whoever asks meanwhile is told of that one. */
    void measure(Consumer<Boolean> told) {
        routine = false;
        begin(told);
    }

    /** As {@link #measure}; what is under way is given up, and whoever waits for it is told of this one. */
    void measureAnew(Consumer<Boolean> told) {
        routine = false;
        waiting.add(told);
        asksFirst();
    }

    /** The server has been heard: what it was asked in vain, or is being asked, it may say now. */
    void measureIfOwed() {
        if (owed || !waiting.isEmpty()) {
            measureAnew(told -> {});
        }
    }

    private void begin(Consumer<Boolean> told) {
        waiting.add(told);
        if (waiting.size() == 1) {
            asksFirst();
        }
    }

    private void asksFirst() {
        asked = 0;
        heard = false;
        measurement++;
        ask();
    }

    private void ask() {
        new Question().go();
    }

    private void answered(boolean well) {
        heard |= well;
        var over = !well && asked > 0;
        asked++;
        if (over || asked == QUICK) {
            routine = false;
            owed = !heard;
            var told = List.copyOf(waiting);
            waiting.clear();
            told.forEach(one -> one.accept(heard));
        } else {
            ask();
        }
    }

    /** One request for the time, with the patience that it has. */
    private final class Question {
        private final double gapBefore = gap();
        private final double sent = tablet.steady();
        private final int page = tablet.page();
        private final int mine = measurement;
        private boolean over;

        void go() {
            tablet.inSteady(PATIENCE, () -> ends(false));
            if (tablet.air.carries()) {
                day.agenda.in(way(), this::reaches);
            }
        }

        private long way() {
            return routine && asked > 0 ? tablet.air.wayOfARoutine() : tablet.air.way();
        }

        private void reaches() {
            var life = day.server.life();
            if (life != null) {
                var told = life.now();
                var ahead = day.truth.ahead();
                day.agenda.in(way(), () -> arrives(told, ahead));
            } else if (!day.server.isUp() && !day.server.isSuspended()) {
                day.agenda.in(way(), () -> tablet.arrives(() -> ends(false)));
            }
        }

        private void arrives(long told, long ahead) {
            if (!tablet.air.carries()) {
                return;
            }
            tablet.arrives(() -> {
                if (over || page != tablet.page() || mine != measurement) {
                    return;
                }
                var isOfNow = Math.abs(gap() - gapBefore) <= JUMP;
                if (isOfNow) {
                    var guessed = !clock.isSure();
                    clock.take(tablet.own(sent), told, tablet.own(tablet.steady()));
                    slept = 0;
                    tablet.clockMoved(ahead, tablet.steady() - sent, guessed);
                }
                ends(isOfNow);
            });
        }

        private void ends(boolean well) {
            if (!over && page == tablet.page() && mine == measurement) {
                over = true;
                answered(well);
            }
        }
    }

    /** What a beat says is not earlier than that; what contradicts the screen is looked into. */
    void hear(double server) {
        var beat = new Beat(server);
        if (!beat.agrees()) {
            measureAnew(beat::unless);
        }
    }

    /** The time that a beat said, carried on. */
    private final class Beat {
        private final double server;
        private final long told = day.truth.ahead();
        private final double at = tablet.steady();
        private final int since = looks;

        Beat(double server) {
            this.server = server;
        }

        private double said() {
            return server + tablet.steady() - at;
        }

        private double ahead() {
            return clock.now() - said();
        }

        boolean agrees() {
            return clock.isSure() && ahead() >= -clock.doubt() && ahead() <= clock.doubt() + LATE_BEAT;
        }

        void unless(boolean answered) {
            if (!answered && since == looks && (ahead() < -clock.doubt() || Double.isInfinite(clock.doubt()))) {
                clock.set(said());
                slept = 0;
                tablet.clockMoved(told, 0, false);
            }
        }
    }

    /** A step of one of the device's two clocks against the other is sleep, or somebody's hand. */
    void look() {
        var jump = gap() - gapSeen;
        if (Math.abs(jump) < JUMP || !day.parts.looksForSleep()) {
            return;
        }
        var mine = ++looks;
        gapSeen += jump;
        slept += day.parts.countsSleepAlone() ? Math.max(0, jump) : 0;
        forwards += Math.max(0, jump);
        if (jump > 0) {
            tablet.woke(jump);
        }
        measureAnew(told -> reckons(mine));
        tablet.inSteady(day.parts.wakePatience(WAKE_PATIENCE), () -> reckons(mine));
    }

    /** Takes for sleep what no answer has told of. */
    private void reckons(int look) {
        if (look == looks && slept > 0) {
            var jump = slept;
            slept = 0;
            clock.guess(clock.now() + jump);
            tablet.guessed(jump);
        }
    }

    void wakes() {
        look();
        if (day.parts.looksForSleep()) {
            measure(told -> {});
        }
    }
}
