package rinsebell.demo.basins;

import java.util.random.RandomGenerator;
import rinsebell.floor.basin.Job;

/** What is on a head. Its times are common practice, no source; all in minutes. */
enum Kind {
    /** Powder lightener: the foils have to be out before the basin. */
    FOILS(5, 20, 20, 50, 50, true),
    /** Lightener on the scalp. */
    CREAM(1, 20, 30, 45, 50, true),
    COLOUR(1, 30, 35, 45, 45, false);

    private static final int MINUTE = 60;

    private final int before;
    private final int readyFirst;
    private final int readyLast;
    private final int byFirst;
    private final int byLast;
    private final boolean lightens;

    Kind(int before, int readyFirst, int readyLast, int byFirst, int byLast, boolean lightens) {
        this.before = before;
        this.readyFirst = readyFirst;
        this.readyLast = readyLast;
        this.byFirst = byFirst;
        this.byLast = byLast;
        this.lightens = lightens;
    }

    /** Foils out, and the walk, in seconds: it takes a pair of hands and no basin. */
    long before() {
        return before * MINUTE;
    }

    /** Whether only a look tells when it is done, and its rinse-by is hard. */
    boolean lightens() {
        return lightens;
    }

    Job.Harm harm() {
        return lightens ? Job.Harm.HAIR : Job.Harm.RESULT;
    }

    /** From when it may be rinsed by its leaflet, in seconds from the first that is on. */
    long ready(RandomGenerator dice) {
        return dice.nextInt(readyFirst, readyLast + 1) * MINUTE;
    }

    /** By when it must be, likewise. */
    long by(RandomGenerator dice) {
        return dice.nextInt(byFirst, byLast + 1) * MINUTE;
    }

    /** Of ten heads three have foils, two cream, five colour. */
    static Kind any(RandomGenerator dice) {
        var of = dice.nextInt(10);
        return of < 3 ? FOILS : of < 5 ? CREAM : COLOUR;
    }
}
