package rinsebell.web.view;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.ClockTrust;

/**
 * What surrounds every page.
 *
 * @param salon the salon's name
 * @param title of this page, for the window and for screen readers
 * @param ear for whom a device rings that shows this page, unless something else was chosen; empty where the page is
 *     for nobody
 * @param board the feed's board that keeps this page live; empty for a page that stands still, such as a form
 * @param clock whether the time on this page can be believed
 * @param answer what came of the last press of a browser without script; none otherwise
 */
public record Shell(
        String salon,
        String title,
        Nav here,
        Look look,
        String ear,
        String board,
        BellStrip bells,
        ClockTrust clock,
        @Nullable Answer answer) {
    /** The board of a page that stands still but for its bells, such as a form. */
    public static final String BELLS_ONLY = "bells";

    /** Whether the page comes anew by itself where there is no script; what is typed would be lost. */
    public boolean refreshes() {
        return !board.isEmpty() && !board.equals(BELLS_ONLY);
    }

    /** Whether the page says that its time may not be right. */
    public boolean isClockDoubted() {
        return clock != ClockTrust.AGREES;
    }

    public Optional<Answer> lastAnswer() {
        return Optional.ofNullable(answer);
    }
}
