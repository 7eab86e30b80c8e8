package rinsebell.web.view;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What comes next somewhere, and when.
 *
 * @param what in a few words, such as "strand check"
 * @param at the instant to count to and past; none where nothing is counted
 * @param aside one quieter line beside it, such as clock times to copy to paper; may be empty
 */
public record Due(String what, @Nullable Instant at, Urgency urgency, String aside) {

    public Optional<Instant> instant() {
        return Optional.ofNullable(at);
    }
}
