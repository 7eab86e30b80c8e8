package rinsebell.web.board;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.report.DayReport;
import rinsebell.floor.report.Quantile;
import rinsebell.floor.report.RinseLateness;
import rinsebell.floor.salon.StaffId;
import rinsebell.web.view.LeadPage.Part;
import rinsebell.web.view.Plot;
import rinsebell.web.view.Table;
import rinsebell.web.view.Table.Row;
import rinsebell.web.view.Urgency;

/** Tells how late rinses were: above the line is late, and only that has a colour. */
final class RinsesTelling {
    private static final Duration AT_LEAST = Duration.ofMinutes(5);
    /** What is earlier than this lies at the foot of the drawing. */
    private static final Duration EARLIEST = Duration.ofMinutes(30);

    private final Moment moment;
    private final DayReport report;

    RinsesTelling(Moment moment, DayReport report) {
        this.moment = moment;
        this.report = report;
    }

    Part part() {
        var rinses = report.rinses();
        return rinses.isEmpty()
                ? new Part("rinses", moment.say("lead.rinses.none"), List.of(), null)
                : new Part("rinses", moment.say("lead.rinses"), List.of(summary(), table()), plot());
    }

    private Table summary() {
        var heads = Stream.of("whose", "rinses", "late_hard", "late_soft", "latest", "half")
                .map(head -> moment.say("lead.head." + head))
                .toList();
        var rows = new ArrayList<Row>();
        rows.add(summary(moment.say("lead.everybody"), report.rinses()));
        report.rinses().stream()
                .map(one -> Optional.ofNullable(one.stylist()))
                .distinct()
                .forEach(who -> rows.add(summary(who(who.orElse(null)), of(who.orElse(null)))));
        return new Table(moment.say("lead.rinses.by"), heads, rows, false);
    }

    private List<RinseLateness> of(@Nullable StaffId stylist) {
        return report.rinses().stream()
                .filter(one -> Objects.equals(one.stylist(), stylist))
                .toList();
    }

    private String who(@Nullable StaffId stylist) {
        return stylist == null ? moment.say("lead.nobody") : moment.name(stylist);
    }

    private Row summary(String who, List<RinseLateness> rinses) {
        var late = rinses.stream().mapToDouble(one -> one.late().toMillis()).toArray();
        var latest = rinses.stream().map(RinseLateness::late).max(Duration::compareTo);
        return new Row(
                who,
                String.valueOf(rinses.size()),
                late(rinses, true),
                late(rinses, false),
                latest.map(RinsesTelling::against).orElse("–"),
                against(Duration.ofMillis(Math.round(Quantile.of(late, 0.5)))));
    }

    private static String late(List<RinseLateness> rinses, boolean hard) {
        return String.valueOf(rinses.stream()
                .filter(one -> one.isLate() && one.rinseBy().hard() == hard)
                .count());
    }

    /** Minutes and seconds, such as "+2:10"; early ones have a minus. */
    private static String against(Duration late) {
        var seconds = late.abs().toSeconds();
        return (late.isNegative() ? "−" : "+") + "%d:%02d".formatted(seconds / 60, seconds % 60);
    }

    private Table table() {
        var heads = Stream.of("off", "who", "whose", "by", "against", "limit")
                .map(head -> moment.say("lead.head." + head))
                .toList();
        return new Table(
                moment.say("lead.rinses.all"),
                heads,
                report.rinses().stream().map(this::row).toList(),
                true);
    }

    private Row row(RinseLateness one) {
        return new Row(
                List.of(
                        moment.clock(one.ended()),
                        moment.label(one.visit()),
                        who(one.stylist()),
                        moment.clock(one.rinseBy().at()),
                        against(one.late()),
                        moment.say(one.rinseBy().hard() ? "lead.hard" : "lead.soft")),
                one.isLate());
    }

    private Plot plot() {
        var axis = new DayAxis(moment, report);
        var dots = report.rinses().stream()
                .map(one -> new Plot.Dot(axis.at(one.ended()), down(one.late()), urgency(one)))
                .toList();
        return new Plot(moment.say("lead.plot.rinses"), axis.hours(), levels(), List.of(), dots);
    }

    private List<Plot.Level> levels() {
        return Stream.of(latest(), Duration.ZERO, earliest().negated())
                .map(at -> new Plot.Level(down(at), minutes(at), at.isZero()))
                .toList();
    }

    private String minutes(Duration at) {
        var minutes = at.toMinutes();
        return minutes > 0 ? "+" + minutes : minutes < 0 ? "−" + -minutes : "0";
    }

    /** The top of the drawing, in whole five minutes. */
    private Duration latest() {
        return fives(report.rinses().stream()
                .map(RinseLateness::late)
                .max(Duration::compareTo)
                .orElse(AT_LEAST));
    }

    private Duration earliest() {
        var earliest = report.rinses().stream()
                .map(one -> one.late().negated())
                .max(Duration::compareTo)
                .orElse(AT_LEAST);
        return fives(earliest.compareTo(EARLIEST) > 0 ? EARLIEST : earliest);
    }

    private static Duration fives(Duration length) {
        var fives = (length.toMillis() + AT_LEAST.toMillis() - 1) / AT_LEAST.toMillis();
        return AT_LEAST.multipliedBy(Math.max(1, fives));
    }

    private double down(Duration late) {
        var whole = latest().plus(earliest()).toMillis();
        return Math.min(1, latest().minus(late).toMillis() / (double) whole);
    }

    private static Urgency urgency(RinseLateness one) {
        return !one.isLate() ? Urgency.CALM : one.rinseBy().hard() ? Urgency.HIGH : Urgency.MEDIUM;
    }
}
