package rinsebell.demo.turnaround;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.util.FastMath;

/**
 * How long things really take in one salon. Its middles are far below the house numbers or far above them; and where the
 * house takes a triangle, here are lognormal and gamma distributions with a long tail.
 */
final class Pace {
    private static final double MINUTE = 60;

    /** Middles as parts of the house number. */
    private static final double[] QUICK = {0.5, 0.75};

    private static final double[] SLOW = {1.3, 1.7};

    private static final double LEAST_SPREAD = 0.2;
    private static final double MOST_SPREAD = 0.5;

    private final RandomGenerator dice;
    private final Map<Doing, RealDistribution> lengths = new EnumMap<>(Doing.class);
    private final RealDistribution lightening;

    /** As chance makes a salon. */
    Pace(RandomGenerator dice) {
        this.dice = dice;
        for (var doing : Doing.values()) {
            lengths.put(doing, any(doing));
        }
        this.lightening = new BetaDistribution(dice.nextDouble(0.8, 3), dice.nextDouble(1, 4));
    }

    private RealDistribution any(Doing doing) {
        var canBeSlow = SLOW[1] * doing.house() <= doing.most();
        var about = dice.nextBoolean() || !canBeSlow ? QUICK : SLOW;
        var middle = MINUTE * doing.house() * dice.nextDouble(about[0], about[1]);
        var spread = dice.nextDouble(LEAST_SPREAD, MOST_SPREAD);
        return dice.nextBoolean() ? new LogNormalDistribution(FastMath.log(middle), spread) : gamma(middle, spread);
    }

    /** @param spread its standard deviation as a part of its mean */
    private static RealDistribution gamma(double middle, double spread) {
        var shape = 1 / (spread * spread);
        return new GammaDistribution(shape, middle / new GammaDistribution(shape, 1).inverseCumulativeProbability(0.5));
    }

    Duration takes(Doing doing) {
        var length = lengths.get(doing);
        if (length == null) {
            throw new IllegalStateException("nobody says how long this takes: " + doing);
        }
        var seconds = Math.round(drawn(length));
        return Duration.ofSeconds(Math.max(1, Math.min(doing.most() * 60L, seconds)));
    }

    /** How far hair is when it has come as far as it was to: a part of the time between the earliest and the latest. */
    double lightens() {
        return drawn(lightening);
    }

    private double drawn(RealDistribution from) {
        return from.inverseCumulativeProbability(dice.nextDouble());
    }
}
