package rinsebell.web;

import static rinsebell.web.Drawing.bowl;
import static rinsebell.web.Drawing.lane;
import static rinsebell.web.Drawing.narrow;
import static rinsebell.web.Drawing.panning;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import rinsebell.web.board.EarCode;
import rinsebell.web.view.Axis;
import rinsebell.web.view.BasinRow;
import rinsebell.web.view.Bell;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.ChairRow;
import rinsebell.web.view.Due;
import rinsebell.web.view.Ears;
import rinsebell.web.view.FloorPage;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.NotePlace;
import rinsebell.web.view.Rung;
import rinsebell.web.view.Rung.How;
import rinsebell.web.view.Rung.Turn;
import rinsebell.web.view.Shell;
import rinsebell.web.view.Urgency;

/** An invented salon on an invented Saturday at 14:22:48: every state of the floor, as views. */
final class Samples {
    static final ZoneId ZONE = ZoneId.of("Europe/London");
    static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    static final Instant EPOCH = DAY.atStartOfDay(ZONE).toInstant();
    static final Instant NOW = at("14:22:48");
    static final String SALON = "Pepperbox Yard";

    private Samples() {}

    static Instant at(String clock) {
        return DAY.atTime(LocalTime.parse(clock)).atZone(ZONE).toInstant();
    }

    static Screen screen(Assets assets) {
        return new Screen(Words.british(), assets, new TimeStyle(ZONE, false), NOW, "k3f9-1041", null);
    }

    static Shell shell(String title, Nav here, Look look, String board) {
        return new Shell(
                SALON, title, here, look, EarCode.ALL, board, bells(), rinsebell.floor.ClockTrust.AGREES, null);
    }

    static BellStrip bells() {
        return new BellStrip(
                List.of(
                        new Bell(
                                "bell-rinse-73-88",
                                "chair 3",
                                "rinse now, basin A",
                                Urgency.HIGH,
                                at("14:21:36"),
                                "/chairs/3",
                                false,
                                "",
                                "/bells/acknowledge?kind=rinse&subject=73&anchor=88",
                                null),
                        new Bell(
                                "bell-strand_check-76-61",
                                "chair 6",
                                "strand check",
                                Urgency.MEDIUM,
                                at("14:18:38"),
                                "/chairs/6",
                                true,
                                "heard 14:20 · rings again 14:25",
                                null,
                                null),
                        new Bell(
                                "bell-scalp_check-72-97",
                                "chair 2",
                                "scalp check",
                                Urgency.ASKED,
                                at("14:26:36"),
                                "/chairs/2",
                                false,
                                "",
                                null,
                                null)),
                1,
                Map.of(
                        Urgency.HIGH, Duration.ofMinutes(2),
                        Urgency.MEDIUM, Duration.ofMinutes(5),
                        Urgency.LOW, Duration.ofMinutes(10)),
                rung(),
                null);
    }

    /** A rinse that rings at the basins, and for everyone from 14:23 on; a check that a stylist has heard. */
    static List<Rung> rung() {
        return List.of(
                new Rung(
                        "bell-rinse-73-88",
                        "bell-rinse-73-88",
                        "chair 3",
                        at("14:21:36"),
                        "/chairs/3",
                        1,
                        "Chair 3, please",
                        "/bells/acknowledge?kind=rinse&subject=73&anchor=88",
                        List.of(
                                new Turn(at("14:16:36"), "rinse soon", Urgency.ASKED, How.ASKS, ""),
                                new Turn(
                                        at("14:21:36"),
                                        "rinse now",
                                        Urgency.HIGH,
                                        How.RINGS,
                                        "staff-2,assistants,wall"),
                                new Turn(at("14:23"), "rinse now", Urgency.HIGH, How.RINGS, "all"))),
                new Rung(
                        "bell-strand_check-76-61",
                        "bell-strand_check-76-61",
                        "chair 6",
                        at("14:18:38"),
                        "/chairs/6",
                        2,
                        "Chair 6, please",
                        "/bells/acknowledge?kind=strand-check&subject=76&anchor=61",
                        List.of(
                                new Turn(at("14:20"), "strand check", Urgency.MEDIUM, How.HEARD, ""),
                                new Turn(at("14:25"), "strand check", Urgency.MEDIUM, How.RINGS, "staff-3"))));
    }

    static Axis axis() {
        var ticks = IntStream.rangeClosed(-18, 36).mapToObj(step -> {
            var at = at("14:20").plusSeconds(step * 600L);
            return new Axis.Tick(at.getEpochSecond() - EPOCH.getEpochSecond(), new TimeStyle(ZONE, false).clock(at));
        });
        return new Axis(EPOCH, null, ticks.toList());
    }

    static FloorPage floor(Look look) {
        return new FloorPage(shell("Floor", Nav.FLOOR, look, "floor"), axis(), chairs(), basins(), ears());
    }

    static Ears ears() {
        return new Ears(
                "Rings for",
                List.of(
                        new Ears.Row("Odile", "1 device", false),
                        new Ears.Row("assistants", "2 devices, 1 more silent", false),
                        new Ears.Row("desk", "no device", true)));
    }

    static List<ChairRow> chairs() {
        return List.of(
                chair(
                        1,
                        "M. A.",
                        "Odile",
                        new Due("strand check", at("14:30"), Urgency.CALM, "14:30 · rinse by 14:44"),
                        panning(
                                "powder lightener in foils, on 13:49, next check 14:30, rinse by 14:44; toner, mixed 14:20",
                                narrow("Powder lightener · foils", "13:44", "13:49", "14:44")
                                        .mark(MarkKind.CHECKED, "13:59", "14:09", "14:19")
                                        .mark(MarkKind.NEXT_CHECK, "14:30")
                                        .mark(MarkKind.READY_FROM, "14:16"),
                                narrow("Cream lightener · regrowth", "14:06", "14:11", "15:06")
                                        .mark(MarkKind.NEXT_CHECK, "14:31")),
                        "/chairs/1"),
                chair(
                        2,
                        "R. T.",
                        "Odile · Jo helps",
                        new Due("scalp check", at("14:26:36"), Urgency.CALM, "14:26 · rinse by 15:10"),
                        panning(
                                "cream lightener on the regrowth with gentle steam, on 14:16, next check 14:26, rinse by 15:10",
                                bowl("Cream lightener · regrowth, on scalp · gentle steam", "14:10", "14:16", "15:10")
                                        .mark(MarkKind.NEXT_CHECK, "14:26:36")
                                        .mark(MarkKind.READY_FROM, "14:42")
                                        .bar(BarKind.HEAT, "14:17", "14:27")),
                        "/chairs/2"),
                chair(
                        3,
                        "J. W.",
                        "Pavel",
                        new Due("rinse now", at("14:21:36"), Urgency.HIGH, "basin A · by 14:21"),
                        panning(
                                "powder lightener in foils, on 13:26, rinse by 14:21, rinse now",
                                lane().bar(BarKind.MIXED, "13:21", "13:26")
                                        .bar(BarKind.ON, "13:26", "14:21:36")
                                        .bar(BarKind.OVER, "14:21:36", "20:21")
                                        .mark(MarkKind.CHECKED, "13:38", "13:48", "13:58", "14:08", "14:17")
                                        .mark(MarkKind.READY_FROM, "14:02")
                                        .mark(MarkKind.RINSE_BY, Urgency.HIGH, "14:21:36")
                                        .note("13:21", NotePlace.ABOVE, "Powder lightener · foils")),
                        "/chairs/3"),
                chair(
                        4,
                        "A. V.",
                        "Jo · at basin B",
                        new Due("back at the chair", at("14:25:58"), Urgency.CALM, "about 14:26"),
                        panning(
                                "permanent colour, rinsed 14:17",
                                lane().bar(BarKind.ENDED, "13:30", "14:17")
                                        .mark(MarkKind.RINSED, "14:17")
                                        .note("13:30", NotePlace.ABOVE, "Permanent colour · whole head")),
                        "/chairs/4"),
                chair(
                        5,
                        "D. K.",
                        "Pavel",
                        new Due("strand check", at("14:28:43"), Urgency.CALM, "14:28 · rinse by 15:13"),
                        panning(
                                "first round rinsed 14:04; another round off scalp only, on 14:18, rinse by 15:13",
                                bowl("Another round · off scalp only", "14:13", "14:18", "15:13")
                                        .bar(BarKind.MIXED, "13:31", "13:35")
                                        .bar(BarKind.ENDED, "13:35", "14:04")
                                        .mark(MarkKind.RINSED, "14:04")
                                        .mark(MarkKind.NEXT_CHECK, "14:28:43")
                                        .mark(MarkKind.READY_FROM, "14:37")),
                        "/chairs/5"),
                chair(
                        6,
                        "L. S.",
                        "Amara",
                        new Due("strand check", at("14:18:38"), Urgency.MEDIUM, "14:18 · rinse by 14:52"),
                        panning(
                                "high-lift colour, on 13:58, check due since 14:18, rinse by 14:52",
                                bowl("High-lift colour · whole head", "13:52", "13:58", "14:52")
                                        .mark(MarkKind.CHECKED, "14:08")
                                        .mark(MarkKind.NEXT_CHECK, Urgency.MEDIUM, "14:18:38")
                                        .mark(MarkKind.READY_FROM, "14:24")),
                        "/chairs/6"),
                chair(
                        7,
                        "B. N.",
                        "Amara",
                        new Due("is it on?", at("14:15:20"), Urgency.ASKED, "mixed 14:15 · usable till 15:15"),
                        panning(
                                "toner, mixed 14:15, not on yet",
                                lane().bar(BarKind.MIXED, "14:15:20", "15:15:20")
                                        .note("14:15:20", NotePlace.ABOVE, "Toner · mixed, not on")),
                        "/chairs/7"),
                chair(8, "", "", new Due("free", null, Urgency.CALM, ""), panning("free"), "/chairs/8/welcome"));
    }

    static ChairRow chair(int number, String who, String staff, Due due, Ribbon ribbon, String href) {
        return new ChairRow("row-" + number, ChairRow.Tile.chair(number), who, staff, due, ribbon, href);
    }

    static List<BasinRow> basins() {
        return List.of(
                new BasinRow(
                        "A",
                        "free 14:50–15:02",
                        Urgency.CALM,
                        panning(
                                "chair 3 from 14:23, chair 1 from 14:40, chair 2 from 15:02",
                                lane().bar(BarKind.KEPT, "14:23", "14:35", "chair 3")
                                        .bar(BarKind.KEPT, "14:38", "14:50", "chair 1")
                                        .bar(BarKind.KEPT, "15:02", "15:14", "chair 2"))),
                new BasinRow(
                        "B",
                        "chair 4 until 14:26",
                        Urgency.CALM,
                        panning(
                                "chair 4 since 14:16, chair 6 from 14:44, chair 5 from 15:06",
                                lane().bar(BarKind.AT_BASIN, "14:16", "14:26", "chair 4")
                                        .bar(BarKind.KEPT, "14:44", "14:56", "chair 6")
                                        .bar(BarKind.KEPT, "15:06", "15:18", "chair 5"))));
    }
}
