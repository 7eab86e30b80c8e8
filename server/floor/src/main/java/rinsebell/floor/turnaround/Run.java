package rinsebell.floor.turnaround;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One way in which the rest of the day may go, in epoch seconds: heads go to the basins as they are done. */
final class Run {
    private final int number;
    private final double now;
    private final Lengths lengths;
    private final BasinTimes basins;
    private final double[] chairs;

    /**
     * @param number which run, from 0
     * @param chairs of the salon
     * @param freeFrom of each basin
     */
    Run(int number, double now, int chairs, Lengths lengths, double[] freeFrom) {
        this.number = number;
        this.now = now;
        this.lengths = lengths;
        this.basins = new BasinTimes(freeFrom);
        this.chairs = new double[chairs];
        Arrays.fill(this.chairs, now);
    }

    /** A guest at their place among those who are here. */
    private record Here(int place, Guest guest, Course course, double water) {}

    /** When each of those leaves with whom something was begun, in their order. */
    double[] ends(List<Guest> begun) {
        var here = new ArrayList<Here>();
        for (var guest : begun) {
            var course = new Course(guest, lengths, from(guest), number);
            here.add(new Here(here.size(), guest, course, course.water()));
        }
        here.sort(Comparator.comparingDouble(Here::water));
        var ends = new double[here.size()];
        for (var one : here) {
            ends[one.place] = one.course.end(basins, one.water);
            holds(one.guest.chair(), ends[one.place]);
        }
        return ends;
    }

    private double from(Guest guest) {
        return guest.basinUntil() == null ? now : Math.max(now, Course.seconds(guest.basinUntil()));
    }

    /** A chair that was taken out of the salon is given to nobody. */
    private void holds(@Nullable Integer chair, double until) {
        if (chair != null && chair <= chairs.length) {
            chairs[chair - 1] = Math.max(chairs[chair - 1], until);
        }
    }

    /**
     * Somebody who gets a chair.
     *
     * @param number of the chair, from 1
     */
    record Seat(int number, double begins, double done) {}

    /** Gives the next of those who wait the chair that is free first. */
    Seat seat(Guest guest) {
        return seat(guest, first(), 0);
    }

    /** Gives whoever asks the chair that they name, where there is one. */
    Seat seat(Guest guest, Wish wish) {
        var chair = wish.chair()
                .filter(number -> number >= 1 && number <= chairs.length)
                .map(number -> number - 1)
                .orElseGet(this::first);
        return seat(guest, chair, wish.least().toSeconds());
    }

    private int first() {
        var first = 0;
        for (var i = 1; i < chairs.length; i++) {
            first = chairs[i] < chairs[first] ? i : first;
        }
        return first;
    }

    private Seat seat(Guest guest, int chair, double least) {
        var begins = chairs[chair];
        var course = new Course(guest, lengths, begins, number);
        chairs[chair] = Math.max(course.end(basins, course.water()), begins + least);
        return new Seat(chair + 1, begins, chairs[chair]);
    }
}
