package rinsebell.app.time;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import rinsebell.floor.ClockTrust;
import rinsebell.floor.unit.Instants;

/**
 * The one clock of the salon: instants in whole milliseconds that only ever go forward.
 *
 * <p>It takes the wall clock once, as its anchor, and from then on counts on the machine's monotonic counter, so
 * setting the wall clock moves nothing. A machine that slept is told from a wall clock that was set by the uptime,
 * which counts sleep: after a wake the salon's time jumps by the sleep, because a bowl on a head did not sleep. What
 * remains between the wall clock and this one is a step; {@link #trust} says so until a person confirms it.
 */
public final class SalonClock {

    /** The smallest gap that counts, as a step of the wall clock or as a sleep of the machine. */
    static final Duration TOLERANCE = Duration.ofSeconds(1);

    private static final long NANOS_PER_MILLI = 1_000_000;

    private final TimeSources sources;
    private final int speed;

    private final long startNanos;
    private final long startUptimeMillis;
    private long sleptMillis;
    private long lastLookMillis;
    private long wallAheadAtLookMillis;

    /** What the wall clock would show at the start if nobody had set it since. */
    private long trueWallAtStartMillis;

    private long salonAtStartMillis;
    private long shownMillis;
    private boolean behind;
    private long confirmed;
    private Duration confirmedBy = Duration.ZERO;

    /** It starts on a whole millisecond, which may have begun a little before. */
    private SalonClock(TimeSources sources, int speed, Instant start) {
        long startMillis = start.toEpochMilli();
        this.sources = sources;
        this.speed = speed;
        this.startNanos = sources.monotonicNanos() - start.getNano() % NANOS_PER_MILLI;
        this.startUptimeMillis = sources.uptimeMillis().orElse(0);
        this.wallAheadAtLookMillis = sources.wallMillis();
        this.trueWallAtStartMillis = startMillis;
        this.salonAtStartMillis = startMillis;
        this.shownMillis = startMillis;
    }

    /** A clock that starts at what the wall shows; {@code speed} salon seconds pass in each real one. */
    public static SalonClock startingAtTheWall(TimeSources sources, int speed) {
        return new SalonClock(sources, speed, sources.wall());
    }

    /**
     * A clock that goes on from where an earlier process stopped. Within one start of the machine the uptime says how
     * long no server ran; after a new start only the wall clock can, unless it shows less than the mark. A machine that
     * started, by its own clock, before the mark was made has not counted the time that it was off.
     */
    public static SalonClock goingOnFrom(ClockMark mark, TimeSources sources, int speed) {
        SalonClock clock = new SalonClock(sources, speed, start(mark, sources));
        clock.behind = isBehind(mark, sources);
        clock.confirmed = mark.confirmed();
        return clock;
    }

    private static Instant start(ClockMark mark, TimeSources sources) {
        if (isSameStart(mark, sources)) {
            long sinceMarkMillis = sources.uptimeMillis().orElseThrow() - mark.uptimeMillis();
            return settled(mark.salon().plusMillis(sinceMarkMillis), sources.wall());
        }
        return Instants.later(mark.salon(), sources.wall());
    }

    private static boolean isBehind(ClockMark mark, TimeSources sources) {
        if (isSameStart(mark, sources)) {
            return mark.behind();
        }
        // A mark that knows no start of the machine may be of this very one.
        long upMillis = mark.bootId().isBlank() ? 0 : sources.uptimeMillis().orElse(0);
        return sources.wallMillis() - upMillis < mark.salon().toEpochMilli() - TOLERANCE.toMillis();
    }

    private static boolean isSameStart(ClockMark mark, TimeSources sources) {
        return !mark.bootId().isBlank()
                && mark.bootId().equals(sources.bootId())
                && sources.uptimeMillis().orElse(-1) >= mark.uptimeMillis();
    }

    /** Two readings that agree within the tolerance are one: the wall's, so that small errors do not add up. */
    private static Instant settled(Instant counted, Instant wall) {
        return Duration.between(counted, wall).abs().compareTo(TOLERANCE) <= 0 ? wall : counted;
    }

    /** The salon's time. */
    public synchronized Instant now() {
        shownMillis = Math.max(shownMillis, salonAtStartMillis + elapsedMillis() * speed);
        return Instant.ofEpochMilli(shownMillis);
    }

    /**
     * The salon's time for a floor that ends with this fact. Where the clock has just been put right by a later one, it
     * has moved and that floor has not, so that by {@link #now()} everything on it would be due, or nothing.
     *
     * @param lastFact the number of the floor's newest fact
     */
    public synchronized Instant now(long lastFact) {
        return confirmed > lastFact ? now().minus(confirmedBy) : now();
    }

    /** The salon's time at which this clock began, as it is known now. */
    public synchronized Instant start() {
        return Instant.ofEpochMilli(salonAtStartMillis);
    }

    /** Whether the salon's time can be believed. */
    public synchronized ClockTrust trust() {
        if (behind) {
            return ClockTrust.BEHIND;
        }
        return stepSeen().isPresent() ? ClockTrust.SET : ClockTrust.AGREES;
    }

    /** How far the wall clock was set, forward positive; empty when it agrees with the salon's within a second. */
    public synchronized Optional<Duration> stepSeen() {
        long apartMillis = sources.wallMillis() - trueWallAtStartMillis - elapsedMillis();
        return Math.abs(apartMillis) > TOLERANCE.toMillis()
                ? Optional.of(Duration.ofMillis(apartMillis))
                : Optional.empty();
    }

    /**
     * Takes the wall clock's time for true because a person confirmed it. The salon's time moves by the answer, back
     * too. Where it was set the caller moves every open instant by the same amount, so that no countdown changes; where
     * time had passed uncounted, none.
     *
     * @param step the step that the person saw
     * @param fact the number of the fact that says so
     */
    public synchronized void confirm(Duration step, long fact) {
        behind = false;
        confirmed = fact;
        confirmedBy = step;
        trueWallAtStartMillis += step.toMillis();
        salonAtStartMillis += step.toMillis();
        shownMillis += step.toMillis();
    }

    /** What the wall clock shows. */
    public Instant wall() {
        return Instant.ofEpochMilli(sources.wallMillis());
    }

    /** Whether the wall clock shows a time that can be true. */
    public boolean isWallPossible() {
        return ClockProof.isPossible(wall());
    }

    /** How many salon seconds pass in a real one: 1 outside the demo. */
    public int speed() {
        return speed;
    }

    /** The real time until this clock shows an instant, to the nanosecond; zero when it has shown it. */
    public synchronized Duration realTimeUntil(Instant due) {
        // It shows whole milliseconds, of which each real one is so many as its speed says.
        long dueMillis = due.plusNanos(NANOS_PER_MILLI - 1).toEpochMilli();
        long afterStartMillis = -Math.floorDiv(salonAtStartMillis - dueMillis, (long) speed);
        long countedNanos = sources.monotonicNanos() - startNanos;
        long leftNanos = (afterStartMillis - sleptMillis) * NANOS_PER_MILLI - countedNanos;
        return Duration.ofNanos(Math.max(0, leftNanos));
    }

    /** Where this clock stands now, to be kept on disk. */
    public synchronized ClockMark mark() {
        return new ClockMark(sources.bootId(), sources.uptimeMillis().orElse(0), now(), behind, confirmed);
    }

    private long elapsedMillis() {
        long countedMillis = (sources.monotonicNanos() - startNanos) / NANOS_PER_MILLI;
        lookForSleep(countedMillis);
        return countedMillis + sleptMillis;
    }

    /**
     * Reading the uptime costs a file access, so it is read once a second and whenever the wall clock goes on otherwise
     * than the count: the first answer after a wake must already be right. How far the wall clock is off tells nothing:
     * a sleep may be as long as that.
     */
    private void lookForSleep(long countedMillis) {
        boolean lookedJustNow = countedMillis - lastLookMillis < TOLERANCE.toMillis();
        long wallAheadMillis = sources.wallMillis() - countedMillis;
        boolean wallWentAlong = Math.abs(wallAheadMillis - wallAheadAtLookMillis) <= TOLERANCE.toMillis();
        if (lookedJustNow && wallWentAlong) {
            return;
        }
        lastLookMillis = countedMillis;
        wallAheadAtLookMillis = wallAheadMillis;
        sources.uptimeMillis().ifPresent(uptimeMillis -> countSleep(uptimeMillis, countedMillis));
    }

    private void countSleep(long uptimeMillis, long countedMillis) {
        long unseenMillis = uptimeMillis - startUptimeMillis - countedMillis - sleptMillis;
        if (unseenMillis > TOLERANCE.toMillis()) {
            sleptMillis += unseenMillis;
        }
    }
}
