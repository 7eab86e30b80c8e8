package rinsebell.floor.bell;

import java.time.Instant;

/**
 * One stage of a bell.
 *
 * @param from when it begins: reached counts
 * @param step which
 * @param priority how it rings
 * @param audience whom for
 */
public record Stage(Instant from, Step step, Priority priority, Audience audience) implements Comparable<Stage> {
    public enum Step {
        /** It is coming. */
        SOON,
        /** Time to begin the work that comes before. */
        START,
        DUE,
        LATE,
        PAST
    }

    /** Whether it sounds at all. */
    public boolean rings() {
        return priority != Priority.SILENT;
    }

    /** In time; of two at once the one that rings less comes first, so that the other stands. */
    @Override
    public int compareTo(Stage other) {
        var byTime = from.compareTo(other.from);
        var byPriority = priority.compareTo(other.priority);
        return byTime != 0 ? byTime : byPriority != 0 ? byPriority : step.compareTo(other.step);
    }
}
