package rinsebell.floor.client;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;

/**
 * A bowl of an earlier visit.
 *
 * @param mixed when
 * @param portions what was in it; empty when nobody knew
 * @param uses where it was put on, in order
 */
public record EarlierBowl(Instant mixed, BowlReason reason, List<Part> portions, List<Use> uses) {

    public EarlierBowl {
        portions = List.copyOf(portions);
        uses = List.copyOf(uses);
    }

    /**
     * A portion.
     *
     * @param product the name it had in the directions at the time
     */
    public record Part(String product, Grams grams) {}

    /**
     * Where it was put on.
     *
     * @param ended when it was off, or covered by the next; null when nobody wrote that down
     */
    public record Use(Area area, Instant firstOn, @Nullable Instant ended) {

        /** How long it was on; empty when nobody wrote down its end. */
        public Optional<Duration> time() {
            return Optional.ofNullable(ended).map(end -> Duration.between(firstOn, end));
        }
    }
}
