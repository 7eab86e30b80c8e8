package rinsebell.floor;

import java.math.BigDecimal;

/** A weight in grams, exact. */
public record Grams(BigDecimal amount) {}
