package rinsebell.web;

import static rinsebell.web.Samples.EPOCH;
import static rinsebell.web.Samples.at;
import static rinsebell.web.Samples.shell;

import java.util.List;
import java.util.stream.IntStream;
import rinsebell.web.view.Axis;
import rinsebell.web.view.DeskBoard;
import rinsebell.web.view.DeskPage;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Weight;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Lane;
import rinsebell.web.view.Ribbon.Mark;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.Reach;
import rinsebell.web.view.Troubles;
import rinsebell.web.view.Urgency;

/** What the desk may look like. */
final class DeskSamples {
    private static final Reach WHOLE = new Reach(second("14:20"), second("17:30"));

    private DeskSamples() {}

    private static long second(String clock) {
        return at(clock).getEpochSecond() - EPOCH.getEpochSecond();
    }

    static DeskPage desk() {
        return new DeskPage(
                shell("Desk", Nav.DESK, Look.LIGHT, "desk"),
                new Troubles(List.of()),
                new DeskBoard(
                        rows(),
                        List.of("Chair 3: J. W. was told 14:50 and is likely done 15:05 to 15:20. Tell them now. K. O."
                                + " waits for that chair."),
                        List.of(new DeskBoard.Waiting(
                                "K. O.",
                                "waits for a chair",
                                "Chair 3 is yours at about 15:05 to 15:20; you are done 16:05 to 16:30.",
                                List.of(told("73", "16:30")),
                                "/visits/73")),
                        List.of(
                                "Chair 8 is free now.",
                                "For a cut and a blow-dry: chair 8 at 14:25, done 15:30 to 15:50.",
                                "Colour only with a skin test on record: no reaction, two days old."),
                        Press.opens("Somebody asks for a place", "which chair, and when", "/welcome?place=bench")
                                .as(Weight.MAIN),
                        hours()));
    }

    private static List<DeskBoard.Row> rows() {
        return List.of(
                row("1", "M. A.", "Odile", "lightener on, rinse by 14:44", "15:05", "15:25"),
                row("2", "R. T.", "Odile · Jo helps", "lightener on, rinse 14:42 to 15:10", "15:20", "15:50"),
                row("3", "J. W.", "Pavel", "being rinsed next", "15:05", "15:20"),
                new DeskBoard.Row(
                        "4",
                        "A. V.",
                        "Jo",
                        "waits",
                        "14:40",
                        "14:50",
                        "not known yet: ask the stylist",
                        List.of(),
                        "/chairs/4"),
                new DeskBoard.Row("8", "", "", "free", "now", "", "free now", List.of(), "/chairs/8"));
    }

    private static DeskBoard.Row row(
            String chair, String who, String staff, String stage, String likely, String latest) {
        var tell = "Your chair is free at about " + likely + ", almost surely by " + latest + ". · told 14:50";
        return new DeskBoard.Row(
                chair, who, staff, stage, likely, latest, tell, List.of(told("7" + chair, latest)), "/chairs/" + chair);
    }

    private static Press told(String visit, String until) {
        return Press.sends(
                "They were told",
                "done by " + until,
                "/visits/" + visit + "/end-told",
                new Press.Hidden("until", until));
    }

    private static DeskBoard.Hours hours() {
        var ticks = IntStream.range(0, 6)
                .mapToObj(i -> "%d:%s".formatted(14 + (i + 1) / 2, i % 2 == 0 ? "30" : "00"))
                .map(clock -> new Axis.Tick(second(clock), clock))
                .toList();
        return new DeskBoard.Hours(
                new Axis(EPOCH, WHOLE, ticks),
                List.of(
                        track("Chair 1", taken("15:05", "M. A."), maybe("15:05", "15:25")),
                        track("Chair 2", taken("15:20", "R. T."), maybe("15:20", "15:50")),
                        new DeskBoard.Track(
                                "Chair 3",
                                new Ribbon(
                                        "",
                                        EPOCH,
                                        WHOLE,
                                        List.of(new Lane(
                                                0,
                                                1,
                                                List.of(
                                                        taken("15:05", "J. W."),
                                                        maybe("15:05", "15:20"),
                                                        bar(BarKind.NEXT, "15:20", "16:05", "K. O.")),
                                                List.of(new Mark(MarkKind.TOLD, second("14:50"), Urgency.CALM)),
                                                List.of())))),
                        track("Chair 8"),
                        track("Basin A", bar(BarKind.KEPT, "14:33", "14:44", "3"))));
    }

    private static DeskBoard.Track track(String name, Bar... bars) {
        var lane = new Lane(0, 1, List.of(bars), List.of(), List.of());
        return new DeskBoard.Track(name, new Ribbon("", EPOCH, WHOLE, List.of(lane)));
    }

    private static Bar taken(String until, String who) {
        return bar(BarKind.TAKEN, "14:20", until, who);
    }

    private static Bar maybe(String from, String until) {
        return bar(BarKind.MAYBE, from, until, "");
    }

    private static Bar bar(BarKind kind, String from, String until, String text) {
        return new Bar(kind, second(from), second(until), text);
    }
}
