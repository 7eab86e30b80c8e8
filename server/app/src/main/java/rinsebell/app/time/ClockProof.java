package rinsebell.app.time;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.DayEvent;

/**
 * What tells of the time besides the mark of the last server, which can be of a clock that was put right since, or not
 * be true at all.
 *
 * @param newest when the newest fact happened; null when nothing was ever written down
 * @param steps by how much the clock was put right, by the number of the fact that says so
 * @param wall what the machine's clock shows
 */
public record ClockProof(@Nullable Instant newest, SortedMap<Long, Duration> steps, Instant wall) {

    /** Machines without a battery for their clock begin far earlier, and a slip of a finger leads far later. */
    private static final Instant EARLIEST = Instant.parse("2020-01-01T00:00:00Z");

    private static final Instant LATEST = Instant.parse("2100-01-01T00:00:00Z");

    /** No salon stands idle so long on a machine that shows another month, with nobody to confirm its clock. */
    private static final Duration LONGEST_UNCONFIRMED = Duration.ofDays(31);

    /** Marks are written every few seconds, so one that is older than the facts is of another clock than theirs. */
    private static final Duration OLDEST = Duration.ofMinutes(1);

    public ClockProof {
        steps = Collections.unmodifiableSortedMap(new TreeMap<>(steps));
    }

    /** What this floor tells, beside the machine's clock. */
    public static ClockProof of(Floor floor, Instant wall) {
        Instant newest = floor.facts().stream()
                .map(Fact::stream)
                .distinct()
                .flatMap(stream -> floor.standing(stream).stream())
                .map(ClockProof::happened)
                .max(Instant::compareTo)
                .orElse(null);
        return new ClockProof(newest, steps(floor.facts()), wall);
    }

    /**
     * By how much these facts say that the clock was put right, by their numbers. One that was withdrawn counts: the
     * clock has followed it, and stays.
     */
    public static SortedMap<Long, Duration> steps(Collection<Fact> facts) {
        SortedMap<Long, Duration> steps = new TreeMap<>();
        for (Fact fact : facts) {
            if (fact.event() instanceof DayEvent.ClockConfirmed confirmed) {
                steps.put(fact.seq(), confirmed.by());
            }
        }
        return steps;
    }

    /** That the clock was put right happened, by the clock before, at another time. */
    private static Instant happened(Fact fact) {
        return fact.event() instanceof DayEvent.ClockConfirmed confirmed
                ? fact.happened().plus(confirmed.by())
                : fact.happened();
    }

    /** Whether a salon's clock can show that. */
    static boolean isPossible(Instant instant) {
        return !instant.isBefore(EARLIEST) && instant.isBefore(LATEST);
    }

    /** The number of the newest fact by which the clock was put right; 0 for none. */
    long confirmed() {
        return steps.isEmpty() ? 0 : steps.lastKey();
    }

    /**
     * The mark, brought up to the facts, or what they tell where they are newer.
     *
     * @throws IllegalArgumentException when the mark can't be true
     */
    Optional<ClockMark> over(ClockMark read) {
        ClockMark mark = read.broughtUpTo(steps);
        if (!isPossible(mark.salon())) {
            throw new IllegalArgumentException("no salon's clock shows " + mark.salon());
        }
        if (newest == null) {
            return Optional.of(mark);
        }
        if (mark.salon().isAfter(later(newest, wall).plus(LONGEST_UNCONFIRMED))) {
            throw new IllegalArgumentException(
                    mark.salon() + " is long after the newest fact, " + newest + ", and the machine's clock, " + wall);
        }
        return newest.isAfter(mark.salon().plus(OLDEST)) ? alone() : Optional.of(mark);
    }

    /** What the facts tell without a mark: it is no earlier than the newest of them. */
    Optional<ClockMark> alone() {
        return Optional.ofNullable(newest).map(fact -> new ClockMark("", 0, fact, false, confirmed()));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
