package rinsebell.floor.visit;

import java.time.Instant;
import rinsebell.floor.product.Cover;

/**
 * What lies over an application from an instant on, until the next.
 *
 * @param seq the number of the fact that began it
 */
public record CoverSpan(long seq, Cover cover, Instant from) {}
