package rinsebell.demo.basins;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * A Saturday as it was booked, and who comes.
 *
 * @param seed makes the same day again, in the same band
 * @param use which part of the basins' time the stays take, as the house reckons them
 * @param chairs of the colour station: a head has one from its arrival to its turn at a basin
 * @param stylists who mix and put on
 * @param basins at which heads are rinsed
 * @param hands at the basins
 * @param heads in the order of their arrival
 */
record Day(long seed, double use, int chairs, int stylists, int basins, int hands, List<Head> heads) {
    /** How long clients come, in seconds. */
    static final long OPEN = 9 * 3_600;

    private static final int FEWEST_CHAIRS = 8;
    private static final int MOST_CHAIRS = 40;
    private static final int CHAIRS_TO_A_BASIN = 5;
    private static final int CHAIRS_TO_A_STYLIST = 3;

    /** Appointments are made for each quarter of an hour; one of four clients has none. */
    private static final long APPOINTMENT = 15 * 60;

    private static final int WALKS_IN = 4;

    /** Two thirds come at most so many seconds before or after it. */
    private static final long UNPUNCTUAL = 5 * 60;

    Day {
        heads = List.copyOf(heads);
    }

    static Day of(Band band, long seed) {
        var dice = new SplittableRandom(seed * Band.values().length + band.ordinal());
        var use = dice.nextDouble(band.from(), band.until());
        var chairs = dice.nextInt(FEWEST_CHAIRS, MOST_CHAIRS + 1);
        var basins = Math.round((float) chairs / CHAIRS_TO_A_BASIN);
        var stylists = Math.round((float) chairs / CHAIRS_TO_A_STYLIST);
        return new Day(seed, use, chairs, stylists, basins, basins + 1, heads(dice, use * basins * OPEN));
    }

    /** As many as their stays fill the time that is to be filled. */
    private static List<Head> heads(RandomGenerator dice, double fill) {
        var all = new ArrayList<Head>();
        var filled = 0L;
        while (filled < fill) {
            all.add(Head.any(dice));
            filled += all.get(all.size() - 1).stay();
        }
        return numbered(all, arrivals(dice, all.size()));
    }

    private static List<Head> numbered(List<Head> heads, List<Long> arrivals) {
        var all = new ArrayList<Head>();
        for (var i = 0; i < heads.size(); i++) {
            all.add(heads.get(i).arriving(i + 1, arrivals.get(i)));
        }
        return all;
    }

    /** Booked evenly over the day. */
    private static List<Long> arrivals(RandomGenerator dice, int count) {
        var all = new ArrayList<Long>();
        for (var i = 0; i < count; i++) {
            all.add(dice.nextInt(WALKS_IN) == 0 ? dice.nextLong(OPEN) : booked(dice, (i + dice.nextDouble()) / count));
        }
        return all.stream().sorted().toList();
    }

    private static long booked(RandomGenerator dice, double share) {
        var appointment = (long) (share * OPEN) / APPOINTMENT * APPOINTMENT;
        return Math.max(0, appointment + Math.round(UNPUNCTUAL * dice.nextGaussian()));
    }
}
