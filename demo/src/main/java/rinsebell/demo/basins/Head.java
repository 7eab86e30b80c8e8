package rinsebell.demo.basins;

import java.time.Duration;
import java.util.List;
import java.util.random.RandomGenerator;
import rinsebell.floor.basin.Work;

/**
 * A client of the day. What is after the last leaflet figure is the truth, of which nobody is told beforehand.
 *
 * @param number from 1
 * @param kind what will be on
 * @param arrives second of the day
 * @param ready from when it may be rinsed, in seconds from the first that is on
 * @param by by when it must be, likewise
 * @param work as the house reckons it
 * @param done when it has come as far as it was to, in seconds from the first that is on
 * @param before what the work before the basin takes, in seconds
 * @param parts what each part at the basin takes, in seconds
 */
record Head(
        int number, Kind kind, long arrives, long ready, long by, Work work, long done, long before, List<Long> parts) {
    /** Half of those who were lightened are toned. */
    private static final int TONED = 2;

    /** How far true lengths lie about those of the house: two thirds within a fifth of it. */
    private static final double SPREAD = 0.2;

    private static final Duration RINSE = Duration.ofMinutes(8);
    private static final Duration TONER_ON = Duration.ofMinutes(5);
    private static final Duration TONER = Duration.ofMinutes(15);

    /** Somebody as chance makes them, whose arrival is still open. */
    static Head any(RandomGenerator dice) {
        var kind = Kind.any(dice);
        var ready = kind.ready(dice);
        var by = kind.by(dice);
        var before = Duration.ofSeconds(kind.before());
        var work = kind.lightens() && dice.nextInt(TONED) == 0
                ? Work.withToner(before, RINSE, TONER_ON, TONER)
                : Work.rinse(before, RINSE);
        var parts = work.parts().stream().map(part -> about(dice, part.takes())).toList();
        var done = kind.lightens() ? dice.nextLong(ready, by + 1) : ready;
        return new Head(0, kind, 0, ready, by, work, done, about(dice, before), parts);
    }

    Head arriving(int place, long at) {
        return new Head(place, kind, at, ready, by, work, done, before, parts);
    }

    private static long about(RandomGenerator dice, Duration house) {
        return Math.max(1, Math.round(house.toSeconds() * Math.exp(SPREAD * dice.nextGaussian())));
    }

    /** How long it takes a basin as the house reckons, in seconds. */
    long stay() {
        return work.stay().toSeconds();
    }
}
