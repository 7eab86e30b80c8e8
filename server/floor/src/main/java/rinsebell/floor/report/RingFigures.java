package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Priority;

/**
 * How one person's bells did in a stretch of time, in the figures of ISA-18.2-2016 / IEC 62682 and EEMUA 191. The standard
 * judges thirty days and says itself that rates alone do not show that alarms are acceptable.
 *
 * @param span how long the stretch was
 * @param bells how many began to ring
 * @param mostInTenMinutes in whichever ten minutes
 * @param periods each of ten minutes, begun one after another; the last may be shorter
 * @param floods more than ten in ten minutes, until below five
 * @param inFlood how long those lasted together
 * @param chattering bells that began three times or more within a minute
 * @param byPriority how many rang low, medium and high
 * @param answers how long bells asked until they were answered, the shortest first
 */
public record RingFigures(
        Duration span,
        int bells,
        int mostInTenMinutes,
        List<Integer> periods,
        List<Flood> floods,
        Duration inFlood,
        int chattering,
        Map<Priority, Integer> byPriority,
        List<Duration> answers) {
    private static final int CHATTERS = 3;
    private static final Duration CHATTERS_WITHIN = Duration.ofMinutes(1);

    public RingFigures {
        periods = List.copyOf(periods);
        floods = List.copyOf(floods);
        byPriority = Map.copyOf(byPriority);
        answers = List.copyOf(answers);
    }

    /**
     * @param rings of one person
     * @param from what began before is not counted
     * @param until what began then or later is not counted
     */
    public static RingFigures of(Collection<Annunciation> rings, Instant from, Instant until) {
        var counted = rings.stream()
                .filter(ring -> !ring.began().isBefore(from) && ring.began().isBefore(until))
                .toList();
        var begins = counted.stream().map(Annunciation::began).sorted().toList();
        var floods = Flood.of(begins);
        return new RingFigures(
                Duration.between(from, until),
                begins.size(),
                most(begins),
                periods(begins, from, until),
                floods,
                floods.stream().map(flood -> flood.before(until)).reduce(Duration.ZERO, Duration::plus),
                chattering(counted),
                byPriority(counted),
                counted.stream()
                        .flatMap(ring -> ring.toAnswer().stream())
                        .sorted()
                        .toList());
    }

    private static int most(List<Instant> begins) {
        var most = 0;
        for (int first = 0, last = 0; last < begins.size(); last++) {
            while (!begins.get(last).isBefore(begins.get(first).plus(Flood.WINDOW))) {
                first++;
            }
            most = Math.max(most, last - first + 1);
        }
        return most;
    }

    private static List<Integer> periods(List<Instant> begins, Instant from, Instant until) {
        var window = Flood.WINDOW.toMillis();
        var length = Duration.between(from, until).toMillis();
        var periods = new int[Math.toIntExact((length + window - 1) / window)];
        begins.forEach(at -> periods[(int) (Duration.between(from, at).toMillis() / window)]++);
        return java.util.Arrays.stream(periods).boxed().toList();
    }

    /** Growing louder is not coming and going. */
    private static int chattering(List<Annunciation> rings) {
        var begins = new HashMap<BellKey, TreeSet<Instant>>();
        rings.stream()
                .filter(ring -> !ring.isLouder())
                .forEach(ring -> begins.computeIfAbsent(ring.bell(), bell -> new TreeSet<>())
                        .add(ring.began()));
        return (int) begins.values().stream().filter(RingFigures::chatters).count();
    }

    private static boolean chatters(TreeSet<Instant> begins) {
        return begins.stream()
                .anyMatch(first ->
                        begins.subSet(first, first.plus(CHATTERS_WITHIN)).size() >= CHATTERS);
    }

    private static Map<Priority, Integer> byPriority(List<Annunciation> rings) {
        var counts = new EnumMap<Priority, Integer>(Priority.class);
        rings.forEach(ring -> counts.merge(ring.priority(), 1, Integer::sum));
        return counts;
    }

    /** Bells in ten minutes, on average; 0 where there was no time. */
    public double perTenMinutes() {
        return span.isZero() ? 0 : bells * (double) Flood.WINDOW.toMillis() / span.toMillis();
    }

    /** The part of all periods with more than ten bells, from 0 to 1. */
    public double partOver() {
        var over = periods.stream().filter(count -> count > Flood.MOST).count();
        return periods.isEmpty() ? 0 : over / (double) periods.size();
    }

    /** The part of the time spent in floods, from 0 to 1. */
    public double partInFlood() {
        return span.isZero() ? 0 : inFlood.toMillis() / (double) span.toMillis();
    }

    /** The part of all bells that rang so, from 0 to 1; empty when none rang. */
    public Optional<Double> part(Priority priority) {
        return bells == 0 ? Optional.empty() : Optional.of(byPriority.getOrDefault(priority, 0) / (double) bells);
    }

    /** How long a bell asked until it was answered: half, say, were answered sooner. Empty when none was. */
    public Optional<Duration> toAnswer(double part) {
        var millis = answers.stream().mapToDouble(Duration::toMillis).toArray();
        return millis.length == 0
                ? Optional.empty()
                : Optional.of(Duration.ofMillis(Math.round(Quantile.of(millis, part))));
    }
}
