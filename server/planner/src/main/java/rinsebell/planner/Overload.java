package rinsebell.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import rinsebell.floor.basin.Hands;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;

/**
 * A lower bound for the first figure, by counting work alone. If more work has to be done within a span of time than there
 * are basins or hands for, some of those heads are late, and the cheapest that make up for it tell how much that counts at
 * least; spans that do not overlap add up. The same with every rinse-by a step later tells who is late by more than a step.
 */
final class Overload {
    /** More steps than this are not counted. */
    private static final int STEPS = 40;

    private static final int MOST_JOBS = 150;

    private final Station station;
    private final Seconds seconds;
    private final List<Job> jobs;

    /** @param jobs those that find a turn at all */
    Overload(Station station, Seconds seconds, List<Job> jobs) {
        this.station = station;
        this.seconds = seconds;
        this.jobs = jobs;
    }

    /**
     * Work that must be done in a span for its head not to be late.
     *
     * @param work in seconds, of a basin or of a pair of hands
     */
    private record Piece(int from, int until, int work, int weight) {}

    /** How much of a resource there is in a span, in seconds. */
    private interface Capacity {
        long in(int from, int until);
    }

    /** How much more is asked for in a span than there is, as the weight of those that are late for it at least. */
    private record Excess(int from, int until, long weight) {}

    /** What the first figure is at least; 0 where that is not worth counting. */
    long bound() {
        var bound = 0L;
        var added = 1L;
        for (var step = 0; step < STEPS && added > 0 && jobs.size() <= MOST_JOBS; step++) {
            added = bound(step * Seconds.down(Score.STEP));
            bound += added;
        }
        return bound;
    }

    /** The weight of those that are late by more than so much. */
    private long bound(int later) {
        var basins = new ArrayList<Piece>();
        var hands = new ArrayList<Piece>();
        var hopeless = 0L;
        for (var job : jobs) {
            var from = StayModel.earliest(station, seconds, job);
            var until = seconds.up(job.latest()) + later;
            if (from > until) {
                hopeless += job.harm().weight();
            } else {
                basins.add(stay(job, from, until));
                hands.add(hold(job, from, until));
            }
        }
        var byHands = station.hands().known() ? apart(excesses(hands, this::hands)) : 0;
        return hopeless + Math.max(byHands, apart(excesses(basins, this::basins)));
    }

    private static Piece stay(Job job, int from, int until) {
        var stay = Seconds.down(job.work().stay());
        return new Piece(from, until + stay, stay, job.harm().weight());
    }

    private static Piece hold(Job job, int from, int until) {
        var holds = job.work().hands();
        var first =
                holds.stream().mapToInt(hold -> Seconds.down(hold.from())).min().orElse(0);
        var last =
                holds.stream().mapToInt(hold -> Seconds.up(hold.until())).max().orElse(0);
        var work = holds.stream()
                .mapToInt(hold -> Seconds.down(hold.until().minus(hold.from())))
                .sum();
        return new Piece(from + first, until + last, work, job.harm().weight());
    }

    private long basins(int from, int until) {
        return station.basins().stream()
                .mapToLong(basin -> Math.max(0, until - Math.max(from, seconds.down(basin.freeFrom()))))
                .sum();
    }

    private long hands(int from, int until) {
        var steps = station.hands().steps();
        var sum = 0L;
        for (var i = 0; i < steps.size(); i++) {
            var end = i + 1 < steps.size() ? seconds.up(steps.get(i + 1).from()) : until;
            sum += (long) steps.get(i).count() * overlap(steps.get(i), end, from, until);
        }
        return sum;
    }

    private int overlap(Hands.Step step, int end, int from, int until) {
        return Math.max(0, Math.min(end, until) - Math.max(from, seconds.down(step.from())));
    }

    private static List<Excess> excesses(List<Piece> pieces, Capacity capacity) {
        var inOrder = pieces.stream().sorted(Comparator.comparing(Piece::until)).toList();
        var excesses = new ArrayList<Excess>();
        pieces.stream().mapToInt(Piece::from).distinct().forEach(from -> {
            var within = new ArrayList<Piece>();
            var work = 0L;
            for (var piece : inOrder) {
                if (piece.from() >= from) {
                    within.add(piece);
                    work += piece.work();
                    var excess = work - capacity.in(from, piece.until());
                    if (excess > 0) {
                        excesses.add(new Excess(from, piece.until(), cheapest(within, excess)));
                    }
                }
            }
        });
        return excesses;
    }

    /** The least weight of pieces that together make up so much work, where the last may be taken in part. */
    private static long cheapest(List<Piece> pieces, long work) {
        var left = work;
        var weight = 0.0;
        for (var piece : pieces.stream()
                .sorted(Comparator.comparingDouble(one -> (double) one.weight() / Math.max(1, one.work())))
                .toList()) {
            if (left <= 0) {
                break;
            }
            weight += piece.weight() * Math.min(1.0, (double) left / Math.max(1, piece.work()));
            left -= piece.work();
        }
        return (long) Math.ceil(weight - 1e-6);
    }

    /** The most that spans add up to of which none overlap. */
    private static long apart(List<Excess> excesses) {
        var most = new TreeMap<Integer, Long>();
        most.put(Integer.MIN_VALUE, 0L);
        for (var excess :
                excesses.stream().sorted(Comparator.comparing(Excess::until)).toList()) {
            var sum = most.floorEntry(excess.from()).getValue() + excess.weight();
            if (sum > most.lastEntry().getValue()) {
                most.put(excess.until(), sum);
            }
        }
        return most.lastEntry().getValue();
    }
}
