package rinsebell.app.time;

import java.time.Instant;

/**
 * Where the salon's clock stood at some moment, kept on disk to bridge a restart of the server.
 *
 * @param bootId the machine's start in which the mark was made; blank where not known
 * @param uptimeMillis milliseconds since that start, sleep included; zero where not known
 * @param salon the salon's time at that moment
 */
public record ClockMark(String bootId, long uptimeMillis, Instant salon) {}
