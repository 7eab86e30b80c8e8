package rinsebell.floor.simulation;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** All chance of a day: the same seed throws the same. */
final class Dice {
    private final Random random;

    Dice(long seed) {
        random = new Random(seed);
    }

    /** From 0, below the bound. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    boolean onceIn(int times) {
        return random.nextInt(times) == 0;
    }

    @SafeVarargs
    final <T> T of(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** One of these, whatever order they come in as long as it is always the same; empty when there are none. */
    <T> Optional<T> any(Collection<T> choices) {
        return choices.isEmpty() ? Optional.empty() : Optional.of(of(List.copyOf(choices)));
    }

    /** Up to so many minutes, to the millisecond, and now and then none at all. */
    Duration within(int minutes) {
        return onceIn(8) ? Duration.ZERO : Duration.ofMillis(random.nextInt(minutes * 60_000));
    }

    <T> List<T> shuffled(Collection<T> all) {
        var list = new ArrayList<>(all);
        Collections.shuffle(list, random);
        return list;
    }
}
