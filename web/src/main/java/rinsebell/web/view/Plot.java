package rinsebell.web.view;

import java.util.List;
import java.util.Locale;

/**
 * A drawing over the hours of a day. Places are parts of its width and height, from the left and from the top, from 0 to 1;
 * the page gets them in per cent.
 *
 * @param telling the drawing in words, for whoever can't see it; a table beside it has the figures
 */
public record Plot(String telling, List<Tick> hours, List<Level> levels, List<Bar> bars, List<Dot> dots) {

    /** @param text such as "14:00" */
    public record Tick(double at, String text) {
        public String x() {
            return percent(at);
        }
    }

    /**
     * A line across.
     *
     * @param main whether all else is measured from it
     */
    public record Level(double at, String text, boolean main) {
        public String y() {
            return percent(at);
        }
    }

    public record Bar(double left, double top, double wide, double tall, Urgency urgency) {
        public String x() {
            return percent(left);
        }

        public String y() {
            return percent(top);
        }

        public String width() {
            return percent(wide);
        }

        public String height() {
            return percent(tall);
        }
    }

    public record Dot(double left, double top, Urgency urgency) {
        public String x() {
            return percent(left);
        }

        public String y() {
            return percent(top);
        }
    }

    private static String percent(double part) {
        return String.format(Locale.ROOT, "%.2f%%", 100 * part);
    }
}
