package rinsebell.floor.visit;

/** Names an application: the number of the fact that put it on. */
public record ApplicationId(long value) {}
