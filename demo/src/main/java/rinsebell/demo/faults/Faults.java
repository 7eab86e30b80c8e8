package rinsebell.demo.faults;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What goes wrong in a day, and when. */
final class Faults {
    /** One of them so often. */
    private static final long APART = 600_000;

    private static final long APART_ON_A_BAD_DAY = 120_000;

    private static final long SECOND = 1_000;
    private static final long MINUTE = 60_000;
    private static final long LONGEST_STEP = 7_200_000;

    private final Day day;
    private final Dice dice;
    private final long apart;
    private boolean over;
    private boolean sendsTwice;
    private boolean losesAnswer;
    private boolean answerDawdles;

    Faults(Day day, Dice dice) {
        this.day = day;
        this.dice = dice;
        this.apart = dice.onceIn(5) ? APART_ON_A_BAD_DAY : APART;
    }

    void begin() {
        next();
    }

    /** Nothing fails any more. */
    void end() {
        over = true;
        day.server.diesNot();
        for (var tablet : day.tablets) {
            mends(tablet);
        }
    }

    private void next() {
        day.agenda.in(dice.apart(apart), () -> {
            if (!over) {
                fail();
                next();
            }
        });
    }

    private void fail() {
        switch (dice.below(13)) {
            case 0 -> crash(false);
            case 1 -> crash(true);
            case 2, 3 -> dies();
            case 4 -> refuses();
            case 5 -> cuts();
            case 6 -> feedBreaks();
            case 7 -> sleeps();
            case 8 -> setsDate();
            case 9 -> stepsWall();
            case 10 -> suspends();
            case 11 -> reloads(one());
            default -> troublesPost();
        }
    }

    private void crash(boolean powerGone) {
        day.fault(powerGone ? "power cut" : "process killed");
        day.server.goesDown(powerGone, down());
    }

    /** Mostly soon up again; now and then long enough for people to have gone on without. */
    private long down() {
        return dice.onceIn(4) ? dice.between(MINUTE, 10 * MINUTE) : dice.between(2 * SECOND, 30 * SECOND);
    }

    private void dies() {
        day.server.diesAt(dice.of(List.of(Crash.Point.values())));
    }

    /** What {@link #dies} has prepared has come. */
    void died() {
        day.fault("crash in a press");
        day.server.goesDown(dice.onceIn(2), down());
    }

    private void refuses() {
        day.fault("full disk");
        day.server.disk.refuses(true);
        day.agenda.in(dice.between(SECOND, 2 * MINUTE), () -> day.server.disk.refuses(false));
    }

    private Tablet one() {
        return dice.of(day.tablets);
    }

    private void cuts() {
        var tablet = one();
        day.fault("no Wi-Fi");
        day.tells(tablet.name);
        tablet.air.carries(false);
        tablet.feed.goesSilent();
        day.agenda.in(dice.between(2 * SECOND, 8 * MINUTE), () -> mends(tablet));
    }

    private void mends(Tablet tablet) {
        if (!tablet.air.carries()) {
            tablet.air.carries(true);
            comesBack(tablet);
        }
        if (over && !tablet.isAwake()) {
            tablet.wakes();
        }
    }

    /** The browser notices, or somebody loads the page again, or neither. */
    private void comesBack(Tablet tablet) {
        switch (dice.below(3)) {
            case 0 -> tablet.arrives(tablet.feed::open);
            case 1 -> reloads(tablet);
            default -> {}
        }
    }

    private void feedBreaks() {
        day.fault("feed dropped");
        one().feed.goesSilent();
    }

    private void sleeps() {
        var tablet = one();
        if (!tablet.isAwake()) {
            return;
        }
        day.fault("device asleep");
        day.tells(tablet.name);
        tablet.sleeps();
        var millis = dice.onceIn(2) ? dice.between(2 * SECOND, 30 * SECOND) : dice.between(MINUTE, 30 * MINUTE);
        if (millis > 30 * SECOND) {
            tablet.feed.goesSilent();
        }
        if (dice.onceIn(2)) {
            findsNoWiFi(tablet, millis + dice.between(SECOND, 10 * SECOND));
        }
        day.agenda.in(millis, () -> {
            if (!tablet.isAwake()) {
                tablet.wakes();
            }
        });
    }

    /** A device that wakes takes a while to find its network. */
    private void findsNoWiFi(Tablet tablet, long millis) {
        tablet.air.carries(false);
        tablet.feed.goesSilent();
        day.agenda.in(millis, () -> mends(tablet));
    }

    private long step() {
        var size = dice.onceIn(3) ? dice.between(SECOND, MINUTE) : dice.between(SECOND, LONGEST_STEP);
        return dice.onceIn(2) ? size : -size;
    }

    private void setsDate() {
        var tablet = one();
        if (tablet.isAwake()) {
            day.fault("device's clock set");
            day.tells(tablet.name);
            tablet.setDate(step());
        }
    }

    private void stepsWall() {
        day.fault("server's clock set");
        day.server.machine.setWall(step());
        if (dice.onceIn(2)) {
            day.agenda.in(dice.between(SECOND, 5 * MINUTE), this::confirms);
        }
    }

    private void confirms() {
        var life = day.server.life();
        if (life != null) {
            day.fault("clock confirmed");
            life.confirmClock();
            if (dice.onceIn(3)) {
                day.agenda.in(dice.below(3_000), () -> crash(false));
            }
        }
    }

    private void suspends() {
        day.fault("server suspended");
        day.server.suspends(dice.onceIn(2) ? dice.between(3 * SECOND, MINUTE) : dice.between(MINUTE, 8 * MINUTE));
    }

    private void reloads(Tablet tablet) {
        if (tablet.reloads()) {
            day.fault("page loaded again");
        }
    }

    /** The next press is not as lucky as others. */
    private void troublesPost() {
        sendsTwice = dice.onceIn(2);
        losesAnswer = dice.onceIn(2);
        answerDawdles = dice.onceIn(2);
    }

    boolean sendsTwice() {
        var does = sendsTwice;
        sendsTwice = false;
        return counted(does, "press sent twice");
    }

    boolean losesAnswer() {
        var does = losesAnswer;
        losesAnswer = false;
        return counted(does, "answer lost");
    }

    /** How long an answer takes: long enough that what it shows is old by then. */
    long answerDawdles(long usual) {
        var does = answerDawdles;
        answerDawdles = false;
        return counted(does, "older piece after newer") ? usual + dice.below(20_000) : usual;
    }

    private boolean counted(boolean does, @Nullable String what) {
        if (does && what != null) {
            day.fault(what);
        }
        return does;
    }
}
