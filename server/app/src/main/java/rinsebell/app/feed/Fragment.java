package rinsebell.app.feed;

import java.util.function.Supplier;

/**
 * One live piece of a page.
 *
 * @param id the id of its root element, the same for as long as the piece is on the board
 * @param shown what the piece shows; when it equals what was shown last, nothing is sent
 * @param html draws the root element, whole; called once for all screens, and only after a change
 */
public record Fragment(String id, Object shown, Supplier<String> html) {}
