package rinsebell.floor.visit;

import java.time.Duration;

/** What a look at the hair decided. */
public sealed interface CheckDecision {
    /**
     * Look again.
     *
     * @param after at the latest
     */
    record LookAgain(Duration after) implements CheckDecision {}

    /** It is to be rinsed. */
    record Rinse() implements CheckDecision {}

    CheckDecision RINSE = new Rinse();

    static CheckDecision lookAgain(Duration after) {
        return new LookAgain(after);
    }
}
