package rinsebell.web.board;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.report.UseReport;
import rinsebell.floor.unit.Fraction;
import rinsebell.web.view.LeadPage.Part;
import rinsebell.web.view.Plot;
import rinsebell.web.view.Table;
import rinsebell.web.view.Table.Row;
import rinsebell.web.view.Urgency;

/** Draws which share was thrown away day by day, and lists the same. A day of which nobody said has no column. */
final class WasteDrawing {
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.UK);

    /** Heights of the drawing, in per cent: the least that holds every column is taken. */
    private static final List<Integer> HEIGHTS = List.of(10, 20, 40, 60, 80, 100);

    /** A day on which nothing was left still has a column that can be seen. */
    private static final double LEAST = 0.015;

    private static final int WEEK = 7;

    private final Moment moment;
    private final List<UseReport> days;
    private final List<UseReport> said;

    /** @param days one after the other */
    WasteDrawing(Moment moment, List<UseReport> days) {
        this.moment = moment;
        this.days = days;
        this.said =
                days.stream().filter(day -> UseTelling.share(day).isPresent()).toList();
    }

    Part part() {
        return said.isEmpty()
                ? new Part("days", moment.say("use.days.none", days.size()), List.of(), null)
                : new Part("days", moment.say("use.days", days.size()), List.of(table()), plot());
    }

    private Plot plot() {
        return new Plot(telling(), ticks(), levels(), bars(), List.of());
    }

    /** In words, for whoever can't see it. */
    private String telling() {
        var most = said.stream().max(Comparator.comparing(this::share)).orElseThrow();
        return moment.say(
                "use.days.told",
                date(days.get(0).day()),
                date(days.get(days.size() - 1).day()),
                said.size(),
                UseTelling.percent(share(most)),
                date(most.day()));
    }

    private Fraction share(UseReport day) {
        return UseTelling.share(day).orElse(Fraction.ZERO);
    }

    private static String date(LocalDate day) {
        return SHORT.format(day);
    }

    /** A week apart, the day that is shown the last of them. */
    private List<Plot.Tick> ticks() {
        return IntStream.range(0, days.size())
                .filter(i -> (days.size() - 1 - i) % WEEK == 0)
                .mapToObj(i ->
                        new Plot.Tick((i + 0.5) / days.size(), date(days.get(i).day())))
                .toList();
    }

    private int height() {
        var most = said.stream().map(this::share).max(Comparator.naturalOrder()).orElse(Fraction.ZERO);
        var percent = most.times(Fraction.of(100));
        return HEIGHTS.stream()
                .filter(height -> percent.compareTo(Fraction.of(height)) <= 0)
                .findFirst()
                .orElse(100);
    }

    private List<Plot.Level> levels() {
        var height = height();
        return Stream.of(height, height / 2, 0)
                .map(level -> new Plot.Level(1 - level / (double) height, level + " %", level == 0))
                .toList();
    }

    private List<Plot.Bar> bars() {
        var wide = 1.0 / days.size();
        var height = height() / 100.0;
        return IntStream.range(0, days.size())
                .filter(i -> said.contains(days.get(i)))
                .mapToObj(i -> {
                    var tall = Math.max(LEAST, share(days.get(i)).rounded(4).doubleValue() / height);
                    return new Plot.Bar(i * wide, 1 - tall, wide, tall, Urgency.CALM);
                })
                .toList();
    }

    private Table table() {
        var heads = Stream.of("day", "bowls", "left", "share")
                .map(head -> moment.say("use.head." + head))
                .toList();
        var rows = days.stream()
                .filter(day -> !day.bowls().isEmpty())
                .sorted(Comparator.comparing(UseReport::day).reversed())
                .map(this::row)
                .toList();
        return new Table(moment.say("use.days.table"), heads, rows, true);
    }

    private Row row(UseReport day) {
        var share = UseTelling.share(day);
        return new Row(
                date(day.day()),
                moment.say("use.of", day.told(), day.bowls().size()),
                share.isPresent() ? UseTelling.grams(day.total().left()) : "–",
                share.map(UseTelling::percent).orElse(moment.say("use.not_said")));
    }
}
