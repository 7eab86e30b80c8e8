package rinsebell.app.feed;

import java.time.Instant;
import java.util.Optional;

/** Where the feed gets what it sends. Every method may be called on any thread and must not wait. */
public interface FeedSource {

    /** Whether there is a board of that name; drawing one only to know that would cost too much. */
    boolean knows(String board);

    /** Draws a board from the floor as it is now; empty when there is no board of that name. */
    Optional<Board> draw(String board);

    /**
     * Draws a board as it will be when something falls due, if nothing else happens until then. From that instant on it
     * is what {@link #draw} answers, the very same object.
     *
     * @param due an instant of the salon
     */
    Optional<Board> drawAhead(String board, Instant due);

    /** The present beat. */
    Beat beat();
}
