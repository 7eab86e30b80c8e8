package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.report.DayReport;
import rinsebell.web.view.Plot;

/** Lays the hours of a day's work along a drawing, in whole hours. */
final class DayAxis {
    private static final int LABELS = 5;

    private final Moment moment;
    private final Instant from;
    private final Instant until;

    DayAxis(Moment moment, DayReport report) {
        this.moment = moment;
        this.from = hour(report.from());
        this.until = hour(report.until()).plus(1, ChronoUnit.HOURS);
    }

    private Instant hour(Instant at) {
        return at.atZone(moment.time().zone()).truncatedTo(ChronoUnit.HOURS).toInstant();
    }

    Instant from() {
        return from;
    }

    Instant until() {
        return until;
    }

    /** Where an instant lies, from 0 to 1. */
    double at(Instant instant) {
        return Duration.between(from, instant).toMillis() / (double) length();
    }

    /** How wide a stretch of time is, from 0 to 1. */
    double wide(Duration time) {
        return time.toMillis() / (double) length();
    }

    private long length() {
        return Duration.between(from, until).toMillis();
    }

    /** So few that they stand apart on a phone. */
    List<Plot.Tick> hours() {
        var hours = Duration.between(from, until).toHours();
        var step = Math.max(1, (hours + LABELS - 1) / LABELS);
        var ticks = new ArrayList<Plot.Tick>();
        for (var hour = 0L; hour <= hours; hour += step) {
            var at = from.plus(hour, ChronoUnit.HOURS);
            ticks.add(new Plot.Tick(at(at), moment.clock(at)));
        }
        return ticks;
    }
}
