package rinsebell.floor.product;

/** Names a product of the salon: the number of the fact that entered it. */
public record ProductId(long value) {}
