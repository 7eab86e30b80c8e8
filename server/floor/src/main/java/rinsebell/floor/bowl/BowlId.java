package rinsebell.floor.bowl;

/** Names a bowl: the number of the fact that made it. */
public record BowlId(long value) {}
