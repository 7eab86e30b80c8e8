package rinsebell.planner;

/**
 * When a search gives up.
 *
 * @param millis by the machine's own clock
 * @param fails dead ends
 */
record Limit(long millis, long fails) {
    static Limit ofMillis(long millis) {
        return new Limit(millis, Long.MAX_VALUE);
    }
}
