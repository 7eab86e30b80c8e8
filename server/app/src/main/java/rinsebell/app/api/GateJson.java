package rinsebell.app.api;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.visit.Gate;

/**
 * The answers at the gate; one that is absent was not given.
 *
 * @param skinTestOn the salon's date on which the skin test was applied
 */
record GateJson(
        @Nullable String skinTest,
        @Nullable String skinTestOn,
        @Nullable String scalp,
        @Nullable String earlierReaction,
        @Nullable String metal,
        @Nullable String under16) {
    static GateJson of(Gate gate) {
        var test = Optional.ofNullable(gate.skinTest());
        return new GateJson(
                test.map(done -> Json.code(done.result())).orElse(null),
                test.flatMap(done -> Optional.ofNullable(done.applied()))
                        .map(String::valueOf)
                        .orElse(null),
                Json.code(gate.scalp()),
                Json.code(gate.earlierReaction()),
                Json.code(gate.metal()),
                Json.code(gate.under16()));
    }
}
