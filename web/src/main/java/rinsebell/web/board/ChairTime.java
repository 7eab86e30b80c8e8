package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.Place;
import rinsebell.floor.turnaround.Range;
import rinsebell.floor.turnaround.Turnaround;
import rinsebell.floor.visit.Visit;

/**
 * When a chair is free, as it is told to whoever asks.
 *
 * @param chair its number
 * @param taken by whom; of several that hold it, who leaves last. Null for a chair that is free
 * @param free when, to five minutes; null for a chair that is free, and where nobody can say
 */
public record ChairTime(
        int chair, @Nullable Visit taken, @Nullable Range free) {
    private static final long STEP_SECONDS = Duration.ofMinutes(5).toSeconds();

    /** Every chair of the salon, by its number. */
    public static List<ChairTime> all(Moment moment) {
        var turnaround = moment.floor().turnaround(moment.now());
        return IntStream.rangeClosed(1, moment.floor().salon().rooms().chairs())
                .mapToObj(chair -> of(moment, chair, turnaround))
                .toList();
    }

    private static ChairTime of(Moment moment, int chair, Turnaround turnaround) {
        var holders = moment.floor().openVisits().stream()
                .filter(visit -> new Place.Chair(chair).equals(visit.stay().chair()))
                .filter(visit -> !(visit.place() instanceof Place.Bench))
                .toList();
        var last = holders.stream()
                .max(Comparator.comparing(
                        visit -> turnaround.end(visit.id()).map(Range::latest).orElse(Instant.MIN)));
        var free = holders.stream().allMatch(ChairTime::isKnown)
                ? last.flatMap(visit -> turnaround.end(visit.id()))
                        .map(range -> new Range(rounded(range.likely()), rounded(range.latest())))
                : Optional.<Range>empty();
        return new ChairTime(chair, last.orElse(null), free.orElse(null));
    }

    /** Of somebody with whom nothing was begun and for whom nothing is listed nobody can say anything. */
    static boolean isKnown(Visit visit) {
        return !visit.services().listed().isEmpty()
                || !visit.applications().isEmpty()
                || !visit.services().done().isEmpty();
    }

    /** Nobody is told a time to the minute, nor is anything sent again each second while a head is overdue. */
    static Instant rounded(Instant at) {
        return Instant.ofEpochSecond((at.getEpochSecond() + STEP_SECONDS - 1) / STEP_SECONDS * STEP_SECONDS);
    }
}
