package rinsebell.app.feed;

import java.util.Optional;

/** Where the feed gets what it sends. Every method may be called on any thread and must not wait. */
public interface FeedSource {

    /** Draws a board from the floor as it is now; empty when there is no board of that name. */
    Optional<Board> draw(String board);

    /** The present beat. */
    Beat beat();
}
