package rinsebell.floor.visit;

/** Names a visit: the number of the fact that opened it. */
public record VisitId(long value) {}
