package rinsebell.planner;

/**
 * How long is sought for each figure of the score, in milliseconds. What one does not need is not given to the next.
 *
 * @param over nobody over the rinse-by
 * @param late weighted lateness
 * @param changes what was announced
 * @param waiting waiting
 */
public record Budget(long over, long late, long changes, long waiting) {
    /** For a plan that people wait for. House numbers. */
    public static final Budget QUICK = new Budget(100, 40, 30, 30);

    public static Budget each(long millis) {
        return new Budget(millis, millis, millis, millis);
    }

    long of(Figure figure) {
        return switch (figure) {
            case OVER -> over;
            case LATE -> late;
            case CHANGES -> changes;
            case WAITING -> waiting;
        };
    }
}
