package rinsebell.floor.turnaround;

import java.time.Instant;

/**
 * When something will be.
 *
 * @param likely as often sooner as later
 * @param latest in nine of ten cases it is by then
 */
public record Range(Instant likely, Instant latest) {}
