package rinsebell.planner;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.LongSupplier;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.bowl.Announced;

/**
 * Makes a plan better, one figure of its score after the other. A few stays around somebody who adds to the figure are
 * planned anew while all others stand; ever more of them when nothing gets better, until it is all of them, and then
 * nothing better is there.
 */
final class Search {
    private static final int FIRST = 6;
    private static final long FAILS = 120;

    /** More stays than this are never planned anew together: building the model alone would take too long. */
    private static final int MOST = 60;

    /** How many stays a lower bound looks at together. */
    private static final int GROUP = 12;

    private final Station station;
    private final Pins pins;
    private final Seconds seconds;
    private final Colouring colouring;
    private final LongSupplier nanos;
    private final SplittableRandom dice = new SplittableRandom(1);
    private List<Turn> turns;
    private final List<Job> without;
    private Score score;

    Search(Station station, Plan from, LongSupplier nanos) {
        this.station = station;
        this.pins = new Pins(station);
        this.seconds = Seconds.of(station);
        this.colouring = new Colouring(station);
        this.nanos = nanos;
        this.turns = from.turns();
        this.without = from.without();
        this.score = Score.of(station, from);
    }

    Plan plan() {
        return new Plan(turns, without);
    }

    Score score() {
        return score;
    }

    /** What came of one try. */
    private enum Came {
        BETTER,
        /** There is nothing better. */
        NOTHING,
        /** It was given up. */
        UNKNOWN
    }

    /** The same with no figure known to be as small as it can be. */
    boolean improve(Figure figure, long millis) {
        return improve(figure, millis, 0);
    }

    /**
     * Whether it went on to where nothing better is there.
     *
     * @param least the figure can't be smaller
     */
    boolean improve(Figure figure, long millis, long least) {
        var deadline = nanos.getAsLong() + millis * 1_000_000;
        var size = FIRST;
        var fails = FAILS;
        while (left(deadline) > 0) {
            var guilty = guilty(figure);
            if (guilty.isEmpty() || figure.of(score) <= least) {
                return true;
            }
            if (size >= Math.min(turns.size(), most(figure))) {
                return whole(figure, deadline);
            }
            if (!anyBetter(figure, guilty, size, new Limit(deadline, fails))) {
                size += Math.max(2, size / 3);
                fails += fails / 2;
            }
        }
        return false;
    }

    /** How many stays are planned anew together at most: who is where asks for more. */
    private int most(Figure figure) {
        return isByBasin(figure) ? MOST / 3 : MOST;
    }

    private boolean whole(Figure figure, long deadline) {
        var came = Came.BETTER;
        while (came == Came.BETTER && turns.size() <= most(figure)) {
            came = anew(figure, turns, new Limit(deadline, Long.MAX_VALUE));
        }
        return came == Came.NOTHING;
    }

    /** Those who add more to the figure than they had to alone; who adds most comes first. */
    private List<Turn> guilty(Figure figure) {
        var room = new Room(station, seconds, List.of());
        return turns.stream()
                .filter(turn -> adds(figure, turn) > room.least(figure, turn.job()))
                .sorted(Comparator.comparing((Turn turn) -> -adds(figure, turn)))
                .toList();
    }

    private long adds(Figure figure, Turn turn) {
        return figure.of(station, List.of(turn));
    }

    private boolean anyBetter(Figure figure, List<Turn> guilty, int size, Limit limit) {
        for (var turn : guilty) {
            if (left(limit.millis()) <= 0) {
                return false;
            }
            if (anew(figure, around(figure, turn, size, turns), limit) == Came.BETTER) {
                return true;
            }
        }
        return false;
    }

    /** As many as are to be planned anew, from those whose water is near to where one's is and had better be. */
    private List<Turn> around(Figure figure, Turn guilty, int size, Collection<Turn> among) {
        var middle = (at(guilty) + at(guilty, figure)) / 2;
        var spread = 60 * size;
        record Near(Turn turn, long distance) {}
        return among.stream()
                .map(turn ->
                        new Near(turn, turn.equals(guilty) ? -1 : Math.abs(at(turn) - middle) + dice.nextInt(spread)))
                .sorted(Comparator.comparing(Near::distance))
                .limit(size)
                .map(Near::turn)
                .toList();
    }

    private long at(Turn turn) {
        return turn.water().getEpochSecond();
    }

    private long at(Turn turn, Figure figure) {
        var job = turn.job();
        var instant = switch (figure) {
            case OVER, LATE -> job.latest();
            case CHANGES -> station.announced(job).map(Announced::water).orElse(turn.water());
            case WAITING -> job.wanted();
        };
        return instant.getEpochSecond();
    }

    private long left(long deadline) {
        return (deadline - nanos.getAsLong()) / 1_000_000;
    }

    /** Plans some turns anew while the others stand. */
    private Came anew(Figure figure, List<Turn> free, Limit limit) {
        var jobs = free.stream().map(Turn::job).toList();
        var most = figure.of(station, free) - 1;
        var room = new Room(station, seconds, jobs).atMost(figure, most);
        figure.before().forEach(one -> room.atMost(one, one.of(station, free)));
        var latest = room.latest();
        if (latest.isEmpty()) {
            return Came.NOTHING;
        }
        var model = new StayModel(station, pins, seconds, jobs, latest.get(), isByBasin(figure));
        var moving = new HashSet<>(jobs);
        var standing =
                turns.stream().filter(turn -> !moving.contains(turn.job())).toList();
        model.keep(standing);
        figure.before().forEach(one -> model.limit(one, one.of(station, free)));
        var found = model.minimise(figure, most, new Limit(left(limit.millis()), limit.fails()));
        if (found.turns().isEmpty()) {
            return found.outcome().complete() ? Came.NOTHING : Came.UNKNOWN;
        }
        return take(standing, found.turns(), figure) ? Came.BETTER : Came.UNKNOWN;
    }

    private boolean isByBasin(Figure figure) {
        return pins.anyBasin() || (figure.isOfPlace() && !station.announced().isEmpty());
    }

    private boolean take(List<Turn> standing, List<Turn> moved, Figure figure) {
        var all = new ArrayList<>(standing);
        all.addAll(moved);
        var next = new Plan(isByBasin(figure) ? all : colouring.of(all), without);
        var better = Score.of(station, next).compareTo(score) < 0;
        if (better) {
            turns = next.turns();
            score = Score.of(station, next);
        }
        return better;
    }

    /** The least first figure that any plan can have, by counting work. */
    long bound() {
        var outside = score.over() - Figure.OVER.of(station, turns);
        return outside
                + new Overload(station, seconds, turns.stream().map(Turn::job).toList()).bound();
    }

    /** The same by what groups of stays come to with nobody else there. */
    long bound(long millis) {
        var deadline = nanos.getAsLong() + millis * 1_000_000;
        var room = new Room(station, seconds, List.of());
        var alone = new HashSet<>(turns);
        var bound = score.over() - Figure.OVER.of(station, turns);
        for (var turn : guilty(Figure.OVER)) {
            if (alone.contains(turn) && left(deadline) > 0) {
                var group = around(Figure.OVER, turn, GROUP, alone);
                bound += together(group, deadline);
                group.forEach(alone::remove);
            }
        }
        return bound
                + alone.stream()
                        .mapToLong(turn -> room.least(Figure.OVER, turn.job()))
                        .sum();
    }

    private long together(List<Turn> group, long deadline) {
        var jobs = group.stream().map(Turn::job).toList();
        var now = Figure.OVER.of(station, group);
        var room = new Room(station, seconds, jobs).atMost(Figure.OVER, now - 1);
        var latest = room.latest();
        if (latest.isEmpty()) {
            return now;
        }
        var model = new StayModel(station, pins, seconds, jobs, latest.get(), pins.anyBasin());
        var outcome = model.minimise(Figure.OVER, now - 1, new Limit(left(deadline) / 2, Long.MAX_VALUE))
                .outcome();
        return Math.min(now, outcome.bound());
    }
}
