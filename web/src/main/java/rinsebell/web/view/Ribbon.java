package rinsebell.web.view;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The drawing of what happened and is due on one head or basin. All positions are whole seconds since the epoch.
 *
 * @param telling the drawing in words, for whoever can't see it
 * @param epoch the salon's own second zero, near enough that seconds since it stay small
 * @param whole the stretch to show whole; none for a ribbon that pans with the floor's common axis
 */
public record Ribbon(
        String telling, Instant epoch, @Nullable Reach whole, List<Lane> lanes) {

    public Optional<Reach> reach() {
        return Optional.ofNullable(whole);
    }

    /** A stretch of time that is shown whole; its end moves on when now comes within {@link #AHEAD_SECONDS} of it. */
    public record Reach(long from, long until) {
        public static final long AHEAD_SECONDS = 300;
    }

    /**
     * One line of the drawing: an application, or a basin.
     *
     * @param place counted from 0, of {@code of} lanes that share the height
     */
    public record Lane(int place, int of, List<Bar> bars, List<Mark> marks, List<Note> notes) {
        /** Upper edge in per cent of the ribbon's height. */
        public int top() {
            return 100 * place / of;
        }

        /** Height in per cent of the ribbon's height. */
        public int height() {
            return 100 / of;
        }

        public List<Bar> bars(BarKind kind) {
            return bars.stream().filter(bar -> bar.kind() == kind).toList();
        }

        public List<Mark> marks(MarkKind kind) {
            return marks.stream().filter(mark -> mark.kind() == kind).toList();
        }
    }

    public enum BarKind {
        /** Mixed and not on a head: dashed. */
        MIXED,
        /** On a head: solid for time gone, pale for time left. */
        ON,
        /** Beyond rinse-by: red, as far as it has gone. */
        OVER,
        /** Beyond a rinse-by that only misses the result: yellow, as far as it has gone. */
        OVER_SOFT,
        /** Over and done with. */
        ENDED,
        /** Heat: a wavy line. */
        HEAT,
        /** A basin kept for a head. */
        KEPT,
        /** The same, past the head's rinse-by. */
        TOO_LATE,
        /** What is done before the basin: foils out, and the walk. */
        BEFORE,
        /** A toner that works at the basin. */
        TONER,
        /** From when a head may come to the basin until its water must be on. */
        WINDOW,
        /** A chair that somebody holds until they are likely done. */
        TAKEN,
        /** From when a chair is likely free until it almost surely is. */
        MAYBE,
        /** A chair that is likely somebody's who waits for it. */
        NEXT,
        /** A head at a basin. */
        AT_BASIN,
        /** Still at a basin beyond the usual time, as far as it has gone. */
        LINGERING
    }

    public enum MarkKind {
        CHECKED,
        NEXT_CHECK,
        READY_FROM,
        RINSE_BY,
        RINSED,
        /** By when the water of a head that is to come must be on. */
        LATEST,
        /** By when somebody was told to be done. */
        TOLD
    }

    /** @param text what stands in the bar; may be empty */
    public record Bar(BarKind kind, long from, long until, String text) {
        public long seconds() {
            return until - from;
        }
    }

    public record Mark(MarkKind kind, long at, Urgency urgency) {}

    /** A few words at an instant, above or below the bar. */
    public record Note(long at, NotePlace place, String text) {}

    public enum NotePlace {
        ABOVE("above", 24),
        ABOVE_MIDDLE("above middle", 24),
        BELOW("below", 92),
        BELOW_BEFORE("below before", 92),
        /** Beside the bar's end, where several lanes share the height. */
        AFTER("after", 50);

        private final String css;
        private final int base;

        NotePlace(String css, int base) {
            this.css = css;
            this.base = base;
        }

        /** Where the letters stand, in per cent of the lane's height. */
        public int base() {
            return base;
        }

        public String css() {
            return css;
        }
    }
}
