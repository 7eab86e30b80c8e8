package rinsebell.web;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import rinsebell.web.view.Ribbon;

/**
 * Lays a ribbon's seconds on the screen.
 *
 * <p>Everything on a ribbon is placed at {@code x="4520%"} of a nested {@code svg} whose width stands for a hundred
 * seconds, so one per cent is one second since the ribbon's epoch. Moving and scaling that one element pans the whole
 * ribbon, while dots stay round and letters keep their shape. All values here are per cent of the ribbon's width.
 */
public final class Ruler {
    /** Where "now" stands on a panning ribbon. */
    static final double NOW_AT = 37;
    /** How much time a panning ribbon shows before the script has measured the screen. */
    static final Duration SHOWN = Duration.ofHours(2);

    private final double startSeconds;
    private final double spanSeconds;
    private final double nowSeconds;

    private Ruler(double startSeconds, double spanSeconds, double nowSeconds) {
        this.startSeconds = startSeconds;
        this.spanSeconds = spanSeconds;
        this.nowSeconds = nowSeconds;
    }

    static Ruler of(Ribbon ribbon, Instant now) {
        var nowSeconds = Duration.between(ribbon.epoch(), now).toMillis() / 1000.0;
        return ribbon.reach().map(reach -> fitted(reach, nowSeconds)).orElseGet(() -> panned(nowSeconds));
    }

    private static Ruler fitted(Ribbon.Reach reach, double nowSeconds) {
        var until = Math.max(reach.until(), nowSeconds + Ribbon.Reach.AHEAD_SECONDS);
        return new Ruler(reach.from(), until - reach.from(), nowSeconds);
    }

    private static Ruler panned(double nowSeconds) {
        return new Ruler(nowSeconds - SHOWN.toSeconds() * NOW_AT / 100, SHOWN.toSeconds(), nowSeconds);
    }

    /** Left edge of the hundred-second element. */
    public String x() {
        return percent(-startSeconds / spanSeconds * 100);
    }

    /** Width of the hundred-second element. */
    public String width() {
        return percent(100 / spanSeconds * 100);
    }

    /** Where "now" is; the part that lies in the past is as wide. */
    public String now() {
        return percent(past() * 100);
    }

    /** {@link #x} within the past part, whose own width is the whole there. */
    public String pastX() {
        return percent(-startSeconds / spanSeconds * 100 / past());
    }

    /** {@link #width} within the past part. */
    public String pastWidth() {
        return percent(100 / spanSeconds * 100 / past());
    }

    private double past() {
        return Math.min(1, Math.max(0.0001, (nowSeconds - startSeconds) / spanSeconds));
    }

    private static String percent(double value) {
        return String.format(Locale.ROOT, "%.4f%%", value);
    }
}
