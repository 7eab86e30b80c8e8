package rinsebell.floor.visit;

import org.jspecify.annotations.Nullable;

/**
 * What a strand looked like; each may be left open.
 *
 * @param level lightness, 1 (black) to 10 (lightest), the trade's scale
 * @param tone what warmth is left
 * @param stretch how it stretches wet
 * @param dryness whether the mixture has dried on it
 */
public record StrandFinding(
        @Nullable Integer level,
        @Nullable Tone tone,
        @Nullable Stretch stretch,
        @Nullable Dryness dryness) {
    public static final StrandFinding NOTHING_SAID = new StrandFinding(null, null, null, null);
    public static final int LOWEST_LEVEL = 1;
    public static final int HIGHEST_LEVEL = 10;

    public StrandFinding {
        if (level != null && (level < LOWEST_LEVEL || level > HIGHEST_LEVEL)) {
            throw new IllegalArgumentException("a level is from 1 to 10: " + level);
        }
    }

    public enum Tone {
        RED,
        ORANGE,
        PALE_ORANGE,
        YELLOW,
        PALE_YELLOW,
        NO_WARMTH
    }

    /** How a wet strand answers a gentle pull: common practice, no source. */
    public enum Stretch {
        /** It stretches and springs back. */
        STRETCHES_WELL,
        /** Little spring is left: it stays stretched. */
        STRETCHES_LITTLE,
        /** It snaps, or goes like chewing gum: nothing may stay on it. */
        GIVES_WAY
    }

    public enum Dryness {
        MOIST,
        DRYING
    }
}
