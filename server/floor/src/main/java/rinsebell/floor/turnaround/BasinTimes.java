package rinsebell.floor.turnaround;

import java.util.ArrayList;
import java.util.List;

/** What is taken of the basins in one run, in seconds. */
final class BasinTimes {
    private final List<List<double[]>> taken = new ArrayList<>();

    /** @param freeFrom of each basin; none for a salon in which heads are rinsed where they sit */
    BasinTimes(double[] freeFrom) {
        for (var from : freeFrom) {
            var spans = new ArrayList<double[]>();
            spans.add(new double[] {Double.NEGATIVE_INFINITY, from});
            taken.add(spans);
        }
    }

    /** Takes the basin that is free first for so long, from an instant on, and says when it is free again. */
    double end(double from, double takes) {
        var first = Double.POSITIVE_INFINITY;
        List<double[]> where = null;
        for (var spans : taken) {
            var at = start(spans, from, takes);
            if (at < first) {
                first = at;
                where = spans;
            }
        }
        if (where == null) {
            return from + takes;
        }
        insert(where, first, first + takes);
        return first + takes;
    }

    private static double start(List<double[]> spans, double from, double takes) {
        var at = from;
        for (var span : spans) {
            if (span[0] < at + takes && at < span[1]) {
                at = span[1];
            }
        }
        return at;
    }

    private static void insert(List<double[]> spans, double from, double until) {
        var i = spans.size();
        while (i > 0 && spans.get(i - 1)[0] > from) {
            i--;
        }
        spans.add(i, new double[] {from, until});
    }
}
