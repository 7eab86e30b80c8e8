package rinsebell.web.board;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.report.DayReport;
import rinsebell.floor.report.RingFigures;
import rinsebell.floor.report.Standing;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.LeadPage.Part;
import rinsebell.web.view.Press;
import rinsebell.web.view.Shell;
import rinsebell.web.view.Table;
import rinsebell.web.view.Table.Row;

/**
 * Tells how a day rang, against what ISA-18.2-2016 / IEC 62682 thinks acceptable for one person (its table 7), and how late
 * rinses were.
 */
public final class LeadTelling {
    private static final double MOST_ON_AVERAGE = 2;
    private static final int MOST_IN_TEN_MINUTES = 10;
    private static final double PART_OVER = 0.01;
    private static final int STANDING_BELOW = 5;
    private static final Duration STALE = Duration.ofHours(24);

    private final Moment moment;
    private final DayReport report;

    /** @param moment whose texts know the heads of that day */
    public LeadTelling(Moment moment, DayReport report) {
        this.moment = moment;
        this.report = report;
    }

    /** @param shell of the page, by its title */
    public LeadPage page(Shell shell) {
        var intro = report.isEmpty()
                ? moment.say("lead.nothing")
                : moment.say("lead.hours", moment.clock(report.from()), moment.clock(report.until()));
        return new LeadPage(shell, intro, moment.say("lead.caution"), days(), report.isEmpty() ? List.of() : parts());
    }

    private LeadPage.Days days() {
        var other = Press.opens(moment.say("use.title"), "", "/use?day=" + report.day());
        return DaysTelling.of(moment, report.day(), new LeadPage.At("/lead", "/api/lead.csv", other));
    }

    private List<Part> parts() {
        var parts = new ArrayList<Part>();
        parts.add(new RinsesTelling(moment, report).part());
        people().forEach(person -> parts.add(of(person)));
        parts.add(new SoundsTelling(moment, report).part());
        parts.add(salon());
        return parts;
    }

    /** In the order of the staff list; who rang for nobody is not there. */
    private Stream<StaffId> people() {
        var rung = report.people();
        return moment.floor().salon().staff().stream().map(StaffMember::id).filter(rung::contains);
    }

    private Part of(StaffId person) {
        var name = moment.name(person);
        var plot = new RingsDrawing(moment, report, person);
        return new Part(
                "staff-" + person.value(),
                moment.say("lead.person", name),
                List.of(figures(name, report.of(person)), plot.table(name)),
                plot.plot(name));
    }

    private Part salon() {
        var name = moment.say("lead.salon");
        var plot = new RingsDrawing(moment, report, null);
        return new Part("salon", name, List.of(standing(), plot.table(name)), plot.plot(name));
    }

    private Table figures(String name, RingFigures figures) {
        var rows = Stream.of(
                        Stream.of(
                                row("bells", String.valueOf(figures.bells()), null),
                                row("average", decimal(figures.perTenMinutes()), average(figures)),
                                row("most", String.valueOf(figures.mostInTenMinutes()), most(figures)),
                                row("over", percent(figures.partOver()), figures.partOver() < PART_OVER),
                                row("floods", floods(figures), figures.floods().isEmpty()),
                                row("in_flood", percent(figures.partInFlood()), figures.partInFlood() < PART_OVER),
                                row("chattering", String.valueOf(figures.chattering()), figures.chattering() == 0)),
                        Stream.of(
                                row("half", length(figures.toAnswer(0.5)), null),
                                row("most_answered", length(figures.toAnswer(0.9)), null),
                                row("priorities", priorities(figures), null)))
                .flatMap(all -> all)
                .toList();
        return new Table(moment.say("lead.figures", name), heads(), rows, false);
    }

    private List<String> heads() {
        return Stream.of("figure", "value", "target", "held")
                .map(head -> moment.say("lead.head." + head))
                .toList();
    }

    private static boolean average(RingFigures figures) {
        return figures.perTenMinutes() <= MOST_ON_AVERAGE;
    }

    private static boolean most(RingFigures figures) {
        return figures.mostInTenMinutes() <= MOST_IN_TEN_MINUTES;
    }

    /** @param held whether the target is; null where the standard has none */
    private Row row(String key, String value, @Nullable Boolean held) {
        var judged = held == null ? "" : moment.say(held ? "lead.held" : "lead.not_held");
        return new Row(
                List.of(moment.say("lead." + key), value, moment.say("lead." + key + ".target"), judged),
                Boolean.FALSE.equals(held));
    }

    private String floods(RingFigures figures) {
        return figures.floods().isEmpty()
                ? moment.say("lead.none")
                : String.join(
                        ", ",
                        figures.floods().stream()
                                .map(flood -> moment.say(
                                        "lead.span", moment.clock(flood.began()), moment.clock(flood.ended())))
                                .toList());
    }

    private String priorities(RingFigures figures) {
        return String.join(
                " / ",
                Stream.of(Priority.LOW, Priority.MEDIUM, Priority.HIGH)
                        .map(priority ->
                                figures.part(priority).map(LeadTelling::percent).orElse("–"))
                        .toList());
    }

    private Table standing() {
        var still = report.stillStanding();
        var longest = report.standing().stream().max(Comparator.comparing(one -> one.at(report.until())));
        var stale = report.standing().stream()
                .filter(one -> one.at(report.until()).compareTo(STALE) > 0)
                .count();
        return new Table(
                moment.say("lead.standing"),
                heads(),
                List.of(
                        row("all", String.valueOf(report.of(null).bells()), null),
                        row("still", String.valueOf(still.size()), still.size() < STANDING_BELOW),
                        row("stale", String.valueOf(stale), stale < STANDING_BELOW),
                        row("longest", longest.map(this::longest).orElse("–"), null)),
                false);
    }

    private String longest(Standing one) {
        return moment.say(
                "lead.stood",
                moment.say("bell." + one.bell().kind().name().toLowerCase(Locale.ROOT)),
                length(Optional.of(one.at(report.until()))));
    }

    private String length(Optional<Duration> length) {
        return length.map(some -> length(moment, some)).orElse("–");
    }

    /** Such as "40 s" or "2 min 05 s". */
    static String length(Moment moment, Duration length) {
        var seconds = length.abs().toSeconds();
        return seconds < 60
                ? moment.say("lead.seconds", String.valueOf(seconds))
                : moment.say("lead.minutes", String.valueOf(seconds / 60), "%02d".formatted(seconds % 60));
    }

    /** The same to the tenth of a second where it is short. */
    static String fine(Moment moment, Duration length) {
        return length.toMillis() < 10_000
                ? moment.say("lead.seconds", String.format(Locale.UK, "%.1f", length.toMillis() / 1000.0))
                : length(moment, length);
    }

    private static String decimal(double value) {
        return String.format(Locale.UK, "%.1f", value);
    }

    private static String percent(double part) {
        return String.format(Locale.UK, "%.0f %%", 100 * part);
    }
}
