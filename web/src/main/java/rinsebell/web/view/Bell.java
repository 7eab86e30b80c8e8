package rinsebell.web.view;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One bell as a screen shows it.
 *
 * @param id the bell's key, safe for an element id
 * @param where such as "chair 3"
 * @param what such as "rinse now, basin A"
 * @param due the instant that it counts from or to; none where nothing is counted
 * @param heard whether somebody has said so: it is still shown, and does not sound
 * @param aside who has heard it or put it off, and until when it is quiet; may be empty
 * @param hear where the "heard" press goes; none where there is nothing to press
 * @param further what else can be said to it on a page of its own; none where there is nothing more to say
 */
public record Bell(
        String id,
        String where,
        String what,
        Urgency urgency,
        @Nullable Instant due,
        String href,
        boolean heard,
        String aside,
        @Nullable String hear,
        @Nullable Press further) {
    public Optional<Instant> instant() {
        return Optional.ofNullable(due);
    }

    public Optional<String> hearing() {
        return Optional.ofNullable(hear);
    }

    public Optional<Press> more() {
        return Optional.ofNullable(further);
    }
}
