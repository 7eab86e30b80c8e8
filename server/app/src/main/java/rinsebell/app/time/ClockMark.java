package rinsebell.app.time;

import java.time.Instant;

/**
 * Where the salon's clock stood at some moment, kept on disk to bridge a restart of the server.
 *
 * @param bootId the machine's start in which the mark was made; blank where not known
 * @param uptimeMillis milliseconds since that start, sleep included; zero where not known
 * @param salon the salon's time at that moment
 * @param behind whether the machine had started, by its own clock, before what was already recorded, and nobody had
 *     said yet what the time is
 */
public record ClockMark(String bootId, long uptimeMillis, Instant salon, boolean behind) {}
