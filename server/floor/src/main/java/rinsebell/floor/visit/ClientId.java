package rinsebell.floor.visit;

/** Names a client's record, which stands outside the facts so that it can be erased. */
public record ClientId(long value) {}
