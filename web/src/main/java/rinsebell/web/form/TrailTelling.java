package rinsebell.web.form;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Correction;
import rinsebell.floor.Fact;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.Csv;
import rinsebell.web.board.DaysTelling;
import rinsebell.web.board.Moment;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.LeadPage.Part;
import rinsebell.web.view.Press;
import rinsebell.web.view.Shell;
import rinsebell.web.view.Table;

/** Tells who did what on a day, and who looked at whom: as a page, and line by line for a spreadsheet. */
public final class TrailTelling {
    public static final String PAGE = "/trail";

    private static final List<String> HEADS =
            List.of("recorded", "happened", "who", "device", "what", "detail", "route", "status", "press", "fact");

    /** As ISO 8601 has it, always as long. */
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSXXX");

    private static final int BAD_REQUEST = 400;
    private static final int TOO_MANY = 429;

    private final Moment moment;
    private final UnaryOperator<String> deviceName;

    /**
     * What was done, or looked at, beside the floor.
     *
     * @param person null for nobody
     * @param device its code
     * @param matter the bundle key of what it was about
     * @param route method and pattern of the address
     * @param isLook whether something was looked at or for, and nothing done
     * @param subject which of its kind; null for none
     * @param status as it was answered
     */
    public record Step(
            Instant at,
            @Nullable StaffId person,
            String device,
            String matter,
            String route,
            boolean isLook,
            @Nullable Long subject,
            int status) {

        boolean isRefused() {
            return status >= BAD_REQUEST;
        }
    }

    /**
     * What was recorded on the floor.
     *
     * @param press the id of its press
     * @param device its code
     */
    public record Recorded(Fact fact, String press, String device) {}

    /**
     * @param moment whose floor and texts know the day
     * @param deviceName what a device is called, by its code
     */
    public TrailTelling(Moment moment, UnaryOperator<String> deviceName) {
        this.moment = moment;
        this.deviceName = deviceName;
    }

    /** @param shell of the page, by its title */
    public LeadPage page(Shell shell, LocalDate day, List<Recorded> recorded, List<Step> steps) {
        var other = Press.opens(moment.say("trail.json"), "", "/api/trail?day=" + day);
        var days = DaysTelling.of(moment, day, new LeadPage.At(PAGE, "/api/trail.csv", other));
        var intro = moment.say("trail.said", recorded.size(), steps.size());
        var parts = Stream.of(part("floor", recorded.stream().map(this::row).toList()), part("beside", rows(steps)))
                .filter(part -> !part.tables().get(0).rows().isEmpty())
                .toList();
        return new LeadPage(shell, intro, moment.say("trail.caution"), days, parts);
    }

    private List<Table.Row> rows(List<Step> steps) {
        return steps.stream().map(this::row).toList();
    }

    private Part part(String key, List<Table.Row> rows) {
        var heads = Stream.of("recorded", "who", "device", "what", "detail")
                .map(head -> moment.say("trail.head." + head))
                .toList();
        var title = moment.say("trail." + key);
        return new Part(key, title, List.of(new Table(title, heads, rows, false)), null);
    }

    private Table.Row row(Recorded one) {
        var detail = Stream.of(happened(one.fact), detail(one.fact))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" · "));
        return new Table.Row(
                moment.clock(one.fact.recorded()),
                moment.name(one.fact.by()),
                deviceName.apply(one.device),
                what(one.fact),
                detail);
    }

    /** Where that is another minute than the one in which it was recorded. */
    private String happened(Fact fact) {
        var late = !moment.clock(fact.happened()).equals(moment.clock(fact.recorded()));
        return late ? moment.say("trail.happened", moment.clock(fact.happened())) : "";
    }

    private Table.Row row(Step step) {
        return new Table.Row(
                moment.clock(step.at),
                moment.name(step.person),
                deviceName.apply(step.device),
                what(step),
                about(step));
    }

    /** A correction says which fact it puts right. */
    private String detail(Fact fact) {
        if (fact.event() instanceof Correction.SetBack back) {
            return moment.say("trail.set_back", String.valueOf(back.of()), moment.clock(back.to()));
        }
        return fact.event() instanceof Correction correction
                ? moment.say("trail.of", String.valueOf(correction.of()))
                : new FactDetail(moment).of(fact);
    }

    private String what(Fact fact) {
        var head = fact.stream() instanceof rinsebell.floor.Stream.OfVisit of ? label(of.visit()) : "";
        return head + moment.say(FactRows.key(fact.event()));
    }

    /** Of a visit of another day its number is all that is known here. */
    private String label(VisitId id) {
        return moment.floor()
                        .visit(id)
                        .map(moment::label)
                        .orElseGet(() -> moment.say("trail.visit", String.valueOf(id.value())))
                + ": ";
    }

    private String what(Step step) {
        if (step.route.equals("POST /unlock")) {
            return moment.say(
                    step.status == TOO_MANY
                            ? "trail.pin.wait"
                            : step.isRefused() ? "trail.pin.wrong" : "trail.pin.right");
        }
        var how = step.isRefused() ? "trail.refused" : step.isLook() ? "trail.looked" : "trail.did";
        return moment.say(how, moment.say(step.matter));
    }

    private String about(Step step) {
        return Optional.ofNullable(step.subject)
                .map(number -> step.route.equals("POST /unlock")
                        ? moment.name(new StaffId(number))
                        : moment.say("trail.about", String.valueOf(number)))
                .orElse("");
    }

    /** Both, by when they were recorded; times as ISO 8601 has them, on the salon's clock. */
    public String csv(List<Recorded> recorded, List<Step> steps) {
        var lines = Stream.concat(
                        recorded.stream().map(one -> new Line(one.fact.recorded(), line(one))),
                        steps.stream().map(step -> new Line(step.at, line(step))))
                .sorted((one, next) -> one.at.compareTo(next.at))
                .map(Line::cells);
        return Stream.concat(Stream.of(HEADS), lines).map(Csv::line).collect(Collectors.joining());
    }

    private record Line(Instant at, List<String> cells) {}

    private List<String> line(Recorded one) {
        return List.of(
                told(one.fact.recorded()),
                told(one.fact.happened()),
                moment.name(one.fact.by()),
                one.device,
                what(one.fact),
                Stream.of(detail(one.fact), moment.texts().apply(new TextId(one.fact.seq())))
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining(" · ")),
                "",
                "",
                one.press,
                String.valueOf(one.fact.seq()));
    }

    private List<String> line(Step step) {
        return List.of(
                told(step.at),
                told(step.at),
                moment.name(step.person),
                step.device,
                what(step),
                about(step),
                step.route,
                String.valueOf(step.status),
                "",
                "");
    }

    private String told(Instant at) {
        ZoneId zone = moment.floor().salon().zone();
        return TIME.format(at.atZone(zone));
    }
}
