package rinsebell.floor.report;

import java.time.Instant;
import rinsebell.floor.bell.BellKey;

/**
 * A turn of a bell's plan that rings.
 *
 * @param bell which
 * @param from since when, as the plan says
 */
public record Turned(BellKey bell, Instant from) {}
