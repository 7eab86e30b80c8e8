package rinsebell.floor.visit;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The questions that are asked before anything goes on. Null is "not answered yet".
 *
 * @param skinTest the test for dye
 * @param scalp how the scalp looks
 * @param earlierReaction whether the client ever reacted to hair dye
 * @param metal henna or metal salts on the hair
 * @param under16 whether the client is under sixteen
 */
public record Gate(
        @Nullable SkinTest skinTest,
        @Nullable Scalp scalp,
        @Nullable YesNo earlierReaction,
        @Nullable Metal metal,
        @Nullable YesNo under16) {
    public static final Gate UNANSWERED = new Gate(null, null, null, null, null);

    public enum YesNo {
        YES,
        NO
    }

    /** How the scalp looks before anything goes on. */
    public enum Scalp {
        FINE,
        SORE,
        BROKEN
    }

    /** Henna or metal salts on the hair, and the incompatibility test that answers it. */
    public enum Metal {
        NONE,
        PRESENT,
        PRESENT_TEST_WITHOUT_REACTION,
        PRESENT_TEST_REACTED
    }

    /**
     * A skin test for dye.
     *
     * @param result what it showed
     * @param applied the salon's date on which it was applied; null when none was
     */
    public record SkinTest(Result result, @Nullable LocalDate applied) {
        public enum Result {
            NONE,
            NO_REACTION,
            REACTED
        }

        public static final SkinTest NOT_DONE = new SkinTest(Result.NONE, null);
    }

    public boolean isComplete() {
        return skinTest != null && scalp != null && earlierReaction != null && metal != null && under16 != null;
    }

    /** These answers with newer ones laid over them; what the newer leave open stays. */
    public Gate over(Gate newer) {
        return new Gate(
                newer.skinTest == null ? skinTest : newer.skinTest,
                newer.scalp == null ? scalp : newer.scalp,
                newer.earlierReaction == null ? earlierReaction : newer.earlierReaction,
                newer.metal == null ? metal : newer.metal,
                newer.under16 == null ? under16 : newer.under16);
    }
}
