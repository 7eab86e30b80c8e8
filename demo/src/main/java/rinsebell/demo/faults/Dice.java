package rinsebell.demo.faults;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** All chance of a day: the same seed throws the same. */
final class Dice {
    private final SplittableRandom random;

    Dice(long seed) {
        this(new SplittableRandom(seed));
    }

    private Dice(SplittableRandom random) {
        this.random = random;
    }

    /** Other dice: what is thrown with them moves nothing that is thrown with these. */
    Dice others() {
        return new Dice(random.split());
    }

    /** From 0, below the bound. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    /** From one bound to the other, both among them. */
    long between(long from, long to) {
        return random.nextLong(from, to + 1);
    }

    boolean onceIn(int times) {
        return random.nextInt(times) == 0;
    }

    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** One of these; empty when there are none. */
    <T> Optional<T> any(Collection<T> choices) {
        return choices.isEmpty() ? Optional.empty() : Optional.of(of(List.copyOf(choices)));
    }

    /** A stretch of time of this mean, as events that know nothing of each other are apart; in milliseconds. */
    long apart(long meanMillis) {
        return 1 + Math.round(-Math.log(1 - random.nextDouble()) * meanMillis);
    }
}
