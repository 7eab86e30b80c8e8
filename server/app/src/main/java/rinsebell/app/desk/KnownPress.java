package rinsebell.app.desk;

/**
 * A press that was answered before.
 *
 * @param payloadHash what was asked, as a hash
 * @param outcome what it was answered
 */
public record KnownPress(String payloadHash, Outcome outcome) {}
