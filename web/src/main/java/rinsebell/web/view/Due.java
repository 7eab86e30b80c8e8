package rinsebell.web.view;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What comes next somewhere, and when.
 *
 * @param what in a few words, such as "strand check"
 * @param at the instant to count to and past; none where nothing is counted
 * @param aside one quieter line beside it, such as clock times to copy to paper; may be empty
 * @param alone when a screen that has lost the server rings by itself
 */
public record Due(String what, @Nullable Instant at, Urgency urgency, String aside, List<Alone> alone) {

    /** The bell that would ring at an instant if nothing were done until then. */
    public record Alone(Instant at, Urgency urgency) {}

    public Due(String what, @Nullable Instant at, Urgency urgency, String aside) {
        this(what, at, urgency, aside, List.of());
    }

    public Optional<Instant> instant() {
        return Optional.ofNullable(at);
    }

    /** The bells as the script reads them: {@code 1795271000000:medium 1795271120000:high}; none as null. */
    public @Nullable String aloneText() {
        return alone.isEmpty()
                ? null
                : alone.stream()
                        .map(bell ->
                                bell.at().toEpochMilli() + ":" + bell.urgency().css())
                        .collect(Collectors.joining(" "));
    }
}
