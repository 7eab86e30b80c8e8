package rinsebell.web;

/**
 * One file that a page loads.
 *
 * @param type its media type, as the {@code Content-Type} header takes it
 */
public record Asset(String type, byte[] bytes) {}
