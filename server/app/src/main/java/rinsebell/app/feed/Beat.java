package rinsebell.app.feed;

/**
 * What every screen hears each few seconds, so that it notices when it hears nothing.
 *
 * @param run the id of this start of the process; numbers of another run do not compare
 * @param n the number of the floor that is shown now
 * @param now the salon's time in milliseconds since 1970
 * @param speed salon seconds in a real one, 1 outside the demo
 * @param clock whether the salon's time can be believed: the code of a {@link rinsebell.floor.ClockTrust}
 * @param erased how often something was erased: what a device kept when it was another number is void
 */
public record Beat(String run, long n, long now, int speed, String clock, long erased) {}
