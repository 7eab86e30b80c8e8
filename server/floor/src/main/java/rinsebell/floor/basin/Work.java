package rinsebell.floor.basin;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * What one stay at a basin asks for.
 *
 * @param before what comes before it and takes a pair of hands but no basin: foils out, and the walk
 * @param parts what is done at the basin, in order; never empty
 */
public record Work(Duration before, List<Part> parts) {
    /** What is done at a basin. */
    public enum What {
        RINSE(true),
        TONER_ON(true),
        TONER_WORKS(false);

        private final boolean hands;

        What(boolean hands) {
            this.hands = hands;
        }

        /** Whether somebody stands there all the while. */
        public boolean takesHands() {
            return hands;
        }
    }

    /**
     * @param what is done
     * @param takes how long
     */
    public record Part(What what, Duration takes) {}

    /**
     * A stretch of time in which a pair of hands is taken, counted from the instant at which water is on.
     *
     * @param from negative for what comes before the basin
     * @param until after {@code from}
     */
    public record Hold(Duration from, Duration until) {}

    public Work {
        parts = List.copyOf(parts);
        if (parts.isEmpty()
                || before.isNegative()
                || parts.stream().anyMatch(part -> part.takes().isNegative())) {
            throw new IllegalArgumentException("no such work: " + before + ", " + parts);
        }
    }

    /** A rinse and nothing else. */
    public static Work rinse(Duration before, Duration rinsing) {
        return new Work(before, List.of(new Part(What.RINSE, rinsing)));
    }

    /** A rinse, and a toner that works at the basin and is rinsed there. */
    public static Work withToner(Duration before, Duration rinsing, Duration puttingOn, Duration working) {
        return new Work(
                before,
                List.of(
                        new Part(What.RINSE, rinsing),
                        new Part(What.TONER_ON, puttingOn),
                        new Part(What.TONER_WORKS, working),
                        new Part(What.RINSE, rinsing)));
    }

    public boolean hasToner() {
        return parts.stream().anyMatch(part -> part.what() == What.TONER_WORKS);
    }

    /** How long the basin is taken. */
    public Duration stay() {
        return parts.stream().map(Part::takes).reduce(Duration.ZERO, Duration::plus);
    }

    /** When a pair of hands is taken; parts that follow each other are one hold. */
    public List<Hold> hands() {
        var holds = new ArrayList<Hold>();
        var from = before.negated();
        var at = Duration.ZERO;
        for (var part : parts) {
            if (!part.what().takesHands()) {
                hold(holds, from, at);
                from = at.plus(part.takes());
            }
            at = at.plus(part.takes());
        }
        hold(holds, from, at);
        return List.copyOf(holds);
    }

    private static void hold(List<Hold> holds, Duration from, Duration until) {
        if (until.compareTo(from) > 0) {
            holds.add(new Hold(from, until));
        }
    }
}
