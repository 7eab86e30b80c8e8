package rinsebell.demo.faults;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rinsebell.floor.Command;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Rinse;

/**
 * What should sound on one device, and since when: by the newest plan that its line brought, by true time and the salon's
 * distance from it, and by nothing that the device reckons itself. A turn is late when it does not sound a second after
 * the latest of: its instant; the fact that moved it; the wake or start of the device; the news that the salon's clock was
 * moved.
 */
final class Expected {
    private static final long SECOND = 1_000;

    /** What a line takes longer than that for was no live line. */
    private static final long LIVE_LINE = 500;

    private static final double TOLD_WELL = 600;

    /** What a bad line told is made good little by little, in no more than that. */
    private static final long SLEWS = 4_000;

    private final Day day;
    private final Tablet tablet;
    private final Map<Turn.Key, Long> due = new HashMap<>();
    private final Map<Turn.Key, Long> ended = new HashMap<>();
    private final Map<Turn.Key, Long> started = new HashMap<>();
    private final Set<Turn.Key> excused = new HashSet<>();
    private final List<Own> own = new ArrayList<>();
    private Plan plan;
    private long ahead;
    private long awakeSince;
    private long movedAt;

    /** Whether the line was good enough, since the salon's clock was moved, for a device to know it to half a second. */
    private boolean isToldWell = true;

    private boolean deceived;
    private long checkedUntil;

    /** Something that was pressed on this device: until the house's interval is over it may be quiet about it. */
    private record Own(Command command, long until) {}

    Expected(Day day, Tablet tablet, Plan loaded) {
        this.day = day;
        this.tablet = tablet;
        this.plan = loaded;
        this.ahead = loaded.ahead();
    }

    /** How far the salon's time, as the server last told it, is ahead of true time. */
    long ahead() {
        return ahead;
    }

    Plan plan() {
        return plan;
    }

    boolean isDeceived() {
        return deceived;
    }

    /** Whether it has only just woken, and does not know yet for how long it slept. */
    boolean isDrowsy() {
        return day.agenda.now() <= awakeSince + SECOND;
    }

    /** It took somebody's hand on its clock for sleep while no server answered: early is better than late, and right again when one does. */
    void deceived() {
        deceived = true;
    }

    /**
     * The server has told the time.
     *
     * @param took how long the question and its answer took together
     * @param guessed whether the device had nothing better than a guess before
     */
    void knowsTime(long nowAhead, double took, boolean guessed) {
        isToldWell &= took <= TOLD_WELL || !(guessed || ahead != nowAhead);
        moves(nowAhead);
        if (!isToldWell && took <= TOLD_WELL && nowAhead == day.truth.ahead()) {
            isToldWell = true;
            awakeSince = day.agenda.now() + SLEWS;
            started.clear();
            checkLater(awakeSince);
        }
        if (deceived) {
            deceived = false;
            awakeSince = day.agenda.now();
            started.clear();
            checkLater(awakeSince);
        }
    }

    /** A salon whose clock went back lives some of its time again. */
    private void moves(long nowAhead) {
        if (ahead != nowAhead) {
            day.tells(tablet.name + " hears that the salon's time is " + (nowAhead - ahead) + " ms further ahead");
            ahead = nowAhead;
            movedAt = day.agenda.now();
            started.clear();
            update(movedAt);
            checkLater(movedAt);
            day.agenda.in(SECOND - 1, this::unlessCutOff);
        }
    }

    /** Whoever heard that the clock was moved, and then lost the server, can't ask by how much. */
    private void unlessCutOff() {
        isToldWell &= tablet.isReached();
    }

    void pageBegins(Plan loaded) {
        plan = loaded;
        ahead = loaded.ahead();
        due.clear();
        ended.clear();
        own.removeIf(one -> !tablet.outbox.isWaiting(one.command));
        deceived = false;
        isToldWell = true;
        wakes();
    }

    void wakes() {
        awakeSince = day.agenda.now();
        started.clear();
        update(awakeSince);
        checkLater(awakeSince);
    }

    /** Its line has brought a plan. */
    void told(Plan newer) {
        if (newer.isNewerThan(plan)) {
            var now = day.agenda.now();
            var covered = due.keySet().stream().filter(this::isOwn).toList();
            plan = newer;
            moves(newer.ahead());
            update(now - newer.at() <= LIVE_LINE ? newer.at() : now);
            covered.stream().filter(key -> !isOwn(key)).forEach(key -> due.computeIfPresent(key, (of, since) -> now));
        }
    }

    /** Somebody has pressed something on it. */
    void pressed(Command command) {
        var longest =
                plan.snapshot().floor().salon().policy().ringing().againLow().toMillis();
        own.removeIf(one -> one.until < day.agenda.now());
        own.add(new Own(command, day.agenda.now() + longest));
        day.agenda.in(longest + 1, this::isQuietNoLonger);
        started.keySet().removeIf(this::isOwn);
        due.keySet().stream().filter(this::isOwn).forEach(excused::add);
    }

    private void isQuietNoLonger() {
        var now = day.agenda.now();
        own.stream()
                .filter(one -> one.until == now - 1)
                .forEach(one -> due.replaceAll((key, since) -> isOf(one, key) ? now : since));
        checkLater(now);
    }

    /** @param base no turn that is new by this is due earlier */
    private void update(long base) {
        var now = day.agenda.now();
        var before = new HashMap<>(due);
        due.clear();
        plan.ringing(tablet.ear, now + ahead, turn -> {
            var from = turn.key().from() - ahead;
            due.put(turn.key(), before.getOrDefault(turn.key(), Math.max(from, base)));
        });
        before.keySet().stream().filter(key -> !due.containsKey(key)).forEach(key -> ended.put(key, now));
        if (!due.keySet().equals(before.keySet())) {
            checkLater(now);
        }
        updateAtNextTurn(now);
    }

    private void updateAtNextTurn(long now) {
        var next = plan.nextAfter(now + ahead);
        if (next != Long.MAX_VALUE) {
            var of = plan;
            day.agenda.at(next - ahead, () -> {
                if (plan == of) {
                    update(day.agenda.now());
                }
            });
        }
    }

    private void checkLater(long now) {
        day.agenda.at(now + SECOND, this::check);
    }

    /** The device has begun to sound a turn. */
    void starts(Turn.Key key) {
        day.tally.sounded(key, lateness(key));
        Broken.unless(
                lateness(key) <= SECOND,
                Rule.SOUNDS_IN_TIME,
                () -> tablet.name + " sounds " + key + " late by " + lateness(key) + state());
        if (deceived || !isToldWell) {
            return;
        }
        var since = due.get(key);
        var last = started.put(key, day.agenda.now());
        Broken.unless(
                last == null || since == null || last < since || isOwn(key),
                Rule.SOUNDS_ONCE,
                () -> tablet.name + " sounds " + key + " again, which has rung since " + since);
        onlyWhatRings(key);
    }

    /** The device has ended a turn. */
    void stops() {
        checkLater(day.agenda.now());
    }

    private long lateness(Turn.Key key) {
        var since = due.get(key);
        return since == null || deceived || isOwn(key) || !isToldWell || excused.contains(key) ? 0 : lateness(since);
    }

    private long lateness(long since) {
        return day.agenda.now() - Math.max(since, Math.max(awakeSince, movedAt));
    }

    private void check() {
        if (!tablet.isAwake() || deceived || !isToldWell || checkedUntil == day.agenda.now()) {
            return;
        }
        checkedUntil = day.agenda.now();
        var sounding = tablet.ringing.sounding();
        due.forEach((key, since) -> inTime(key, since, sounding));
        sounding.forEach(this::onlyWhatRings);
        ended.values().removeIf(at -> at < checkedUntil - 10 * SECOND);
    }

    private void inTime(Turn.Key key, long since, Set<Turn.Key> sounding) {
        var now = day.agenda.now();
        var late = lateness(since) >= SECOND;
        Broken.unless(
                !late || sounding.contains(key) || isOwn(key) || endsSoon(key),
                Rule.SOUNDS_IN_TIME,
                () -> tablet.name + " does not sound " + key + ", which has rung since " + since + " and it is " + now
                        + "; awake since " + awakeSince + state());
    }

    /** A device whose clock is a little ahead may have gone on to the next turn. */
    private boolean endsSoon(Turn.Key key) {
        var later = new HashSet<Turn.Key>();
        plan.ringing(tablet.ear, day.agenda.now() + SECOND + ahead, turn -> later.add(turn.key()));
        return !later.contains(key);
    }

    private void onlyWhatRings(Turn.Key key) {
        var now = day.agenda.now();
        var from = key.from() - ahead;
        var rings = due.containsKey(key) || (from >= now && from <= now + SECOND);
        Broken.unless(
                rings
                        || now - ended.getOrDefault(key, 0L) <= SECOND
                        || now - Math.max(awakeSince, movedAt) <= SECOND
                        || isOwn(key),
                Rule.SOUNDS_NOTHING_ELSE,
                () -> tablet.name + " sounds " + key + " at " + now + "; ended " + ended.get(key) + ", ahead " + ahead
                        + state());
    }

    private String state() {
        return "; told " + plan.run() + "-" + plan.number() + ", shows "
                + tablet.feed.shown().run() + "-" + tablet.feed.shown().number() + ", its clock is "
                + Math.round(tablet.clock.now() - day.agenda.now() - ahead) + " ms ahead";
    }

    /** Whether somebody has just said something about it on this device. */
    private boolean isOwn(Turn.Key key) {
        return own.stream().anyMatch(one -> one.until >= day.agenda.now() && isOf(one, key));
    }

    private boolean isOf(Own one, Turn.Key key) {
        return plan.bells().stream()
                .filter(bell -> bell.key().equals(key.bell()))
                .anyMatch(bell -> covers(one, bell));
    }

    private boolean covers(Own one, Bell bell) {
        if (one.command instanceof Acknowledge heard) {
            return bell.key().equals(heard.bell()) || bell.round().equals(round(heard));
        }
        if (one.command instanceof Rinse rinse) {
            return rinse.visit().equals(bell.visit());
        }
        var looks = bell.kind() == BellKind.STRAND_CHECK || bell.kind() == BellKind.SCALP_CHECK;
        return looks && one.command instanceof Report report && report.visit().equals(bell.visit());
    }

    private Object round(Acknowledge heard) {
        return plan.bells().stream()
                .filter(bell -> bell.key().equals(heard.bell()))
                .<Object>map(Bell::round)
                .findFirst()
                .orElse(heard.bell());
    }
}
