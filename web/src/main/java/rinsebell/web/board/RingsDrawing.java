package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.report.Annunciation;
import rinsebell.floor.report.DayReport;
import rinsebell.floor.salon.StaffId;
import rinsebell.web.view.Plot;
import rinsebell.web.view.Table;

/** Draws the bells of each ten minutes of a day, high ones at the foot, and lists the same. */
final class RingsDrawing {
    private static final Duration PERIOD = Duration.ofMinutes(10);
    private static final List<Priority> UPWARDS = List.of(Priority.HIGH, Priority.MEDIUM, Priority.LOW);

    /** What ISA-18.2 thinks manageable on average, and where its flood begins. */
    private static final int MANAGEABLE = 2;

    private static final int FLOOD = 10;

    private final Moment moment;
    private final DayAxis axis;
    private final Map<Instant, Map<Priority, Integer>> periods = new TreeMap<>();

    /** @param person whose; null for the whole salon's, each bell once */
    RingsDrawing(Moment moment, DayReport report, @Nullable StaffId person) {
        this.moment = moment;
        this.axis = new DayAxis(moment, report);
        report.ringsOf(person).forEach(this::count);
    }

    private void count(Annunciation ring) {
        var index = Duration.between(axis.from(), ring.began()).dividedBy(PERIOD);
        if (index >= 0 && ring.began().isBefore(axis.until())) {
            periods.computeIfAbsent(axis.from().plus(PERIOD.multipliedBy(index)), from -> new EnumMap<>(Priority.class))
                    .merge(ring.priority(), 1, Integer::sum);
        }
    }

    /** A little higher than the flood's line, or than the highest column. */
    private int height() {
        return Math.max(
                FLOOD + 1,
                periods.values().stream().mapToInt(RingsDrawing::sum).max().orElse(0) + 1);
    }

    private static int sum(Map<Priority, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    Plot plot(String name) {
        return new Plot(moment.say("lead.plot.rings", name), axis.hours(), levels(), bars(), List.of());
    }

    private List<Plot.Level> levels() {
        return Stream.of(0, MANAGEABLE, FLOOD)
                .map(count -> new Plot.Level(down(count), String.valueOf(count), count == 0))
                .toList();
    }

    private double down(int count) {
        return 1 - count / (double) height();
    }

    private List<Plot.Bar> bars() {
        var bars = new ArrayList<Plot.Bar>();
        periods.forEach((from, counts) -> {
            var below = 0;
            for (var priority : UPWARDS) {
                var count = counts.getOrDefault(priority, 0);
                below += count;
                if (count > 0) {
                    bars.add(new Plot.Bar(
                            axis.at(from),
                            down(below),
                            axis.wide(PERIOD),
                            count / (double) height(),
                            BellTelling.urgency(priority)));
                }
            }
        });
        return bars;
    }

    /** Only those ten minutes in which something rang. */
    Table table(String name) {
        var heads = Stream.of("from", "low", "medium", "high")
                .map(head -> moment.say("lead.head." + head))
                .toList();
        var rows = periods.entrySet().stream()
                .map(period -> new Table.Row(
                        moment.clock(period.getKey()),
                        count(period.getValue(), Priority.LOW),
                        count(period.getValue(), Priority.MEDIUM),
                        count(period.getValue(), Priority.HIGH)))
                .toList();
        return new Table(moment.say("lead.plot.rings", name), heads, rows, true);
    }

    private static String count(Map<Priority, Integer> counts, Priority priority) {
        return String.valueOf(counts.getOrDefault(priority, 0));
    }
}
