package rinsebell.web.form;

import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.ClockTrust;
import rinsebell.floor.bowl.Day;
import rinsebell.floor.visit.Visit;
import rinsebell.web.form.FormDraft.Choice;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;

/** Pages about the salon's day: its log, breaks, basins, and what an outage may have swallowed. */
final class DayPages {
    private static final String DAY = "day";

    private DayPages() {}

    static void enter(FormPages pages) {
        pages.enter(DAY, Presses.PLAIN, DayPages::sheet);
        pages.enter(DAY, "caught-up", DayPages::catchUp);
        pages.enter(DAY, "clock", DayPages::clock);
        Stream.of("break", "back").forEach(press -> pages.enter(DAY, press, Nav.DAY, ask -> staff(ask, press)));
        Stream.of("basin-closed", "basin-opened")
                .forEach(press -> pages.enter(DAY, press, Nav.DAY, ask -> basin(ask, press)));
    }

    private static Form staff(PageAsk ask, String press) {
        return new FormDraft(ask, "day." + press)
                .list("staff", Choices.working(ask), "")
                .form("/day/" + press, "/day");
    }

    private static Form basin(PageAsk ask, String press) {
        var basins = Choices.basins(ask).stream()
                .filter(one -> !one.value().isEmpty())
                .toList();
        return new FormDraft(ask, "day." + press)
                .tiles(
                        "basin",
                        basins,
                        basins.stream().findFirst().map(Choice::value).orElse(""))
                .form("/day/" + press, "/day");
    }

    private static SheetPage sheet(PageAsk ask) {
        var title = ask.say("nav.day");
        var presses = Stream.concat(
                        Stream.of("break", "back", "basin-closed", "basin-opened")
                                .map(press -> Press.opens(ask.say("form.day." + press), "", "/day/" + press)),
                        Stream.of(
                                Press.opens(ask.say("lead.title"), "", "/lead"),
                                Press.opens(ask.say("use.title"), "", "/use")))
                .toList();
        var today = ask.salon().dayOf(ask.moment().now());
        var streams = Stream.concat(
                Stream.of(rinsebell.floor.Stream.day(today)),
                ask.moment().floor().visits().stream().map(visit -> rinsebell.floor.Stream.visit(visit.id())));
        var rows = new FactRows(ask.moment()).of(streams);
        var parts = List.of(
                new Part("", List.of(), presses),
                new Part(rows.isEmpty() ? ask.say("sheet.log.none") : ask.say("sheet.log"), rows, List.of()));
        return new SheetPage(ask.shell(title, Nav.DAY), title, ask.say("sheet.log.intro"), parts, List.of());
    }

    /** Every head, with what is usually forgotten about it while no server runs, in one form. */
    private static SheetPage catchUp(PageAsk ask) {
        var title = ask.say("form.day.caught-up");
        var gaps = ask.moment().floor().day().gaps().stream()
                .map(gap -> gap(ask, gap))
                .toList();
        var rarer = ask.moment().floor().openVisits().stream()
                .map(visit -> rarer(ask, visit))
                .toList();
        var down = new Part(ask.say(gaps.isEmpty() ? "sheet.gaps.none" : "sheet.gaps"), gaps, List.of());
        var form = CatchUpForm.form(ask, "/day/caught-up");
        return new SheetPage(
                ask.shell(title, Nav.DAY),
                title,
                "",
                null,
                List.of(down),
                List.of(form.untitled()),
                List.of(new Part(ask.say("sheet.gaps.rarer"), rarer, List.of())));
    }

    /** The computer's clock was set while this server ran: which of the two is right is a person's to say. */
    private static SheetPage clock(PageAsk ask) {
        var title = ask.say("form.day.clock");
        var clocks = ask.moment().around().clocks();
        var behind = clocks.trust() == ClockTrust.BEHIND
                && !clocks.machine().isBefore(ask.moment().now());
        var hint = ask.say(behind ? "form.day.clock.hint.behind" : "form.day.clock.hint");
        var confirm = Press.sends(ask.say("form.day.clock.submit"), hint, "/day/clock")
                .as(Press.Weight.MAIN);
        var stays = Press.opens(ask.say("form.back"), "", "/");
        var here = ask.say(
                "form.day.clock.here",
                ask.moment().clock(ask.moment().now()),
                ask.moment().clock(clocks.machine()));
        return new SheetPage(
                ask.shell(title, Nav.DAY),
                title,
                ask.say(intro(clocks.trust())),
                List.of(new Part(
                        here,
                        List.of(),
                        clocks.trust() == ClockTrust.AGREES ? List.of(stays) : List.of(confirm, stays))),
                List.of());
    }

    private static String intro(ClockTrust trust) {
        return switch (trust) {
            case AGREES -> "form.day.clock.agrees";
            case SET -> "form.day.clock.intro";
            case BEHIND -> "form.day.clock.behind";
        };
    }

    private static Row gap(PageAsk ask, Day.Gap gap) {
        var until = ask.say(
                "sheet.gap", ask.moment().clock(gap.from()), ask.moment().clock(gap.until()));
        return new Row("", until, "", false, List.of());
    }

    private static Row rarer(PageAsk ask, Visit visit) {
        var base = "/visits/" + visit.id().value() + "/";
        var presses = Stream.of("already-on", "move", "discomfort")
                .map(press -> Press.opens(ask.say("form.visits." + press), "", base + press))
                .toList();
        return new Row(
                ask.moment().placeSign(visit.place()), ask.moment().label(visit), on(ask, visit), false, presses);
    }

    private static String on(PageAsk ask, Visit visit) {
        return visit.onHair().stream()
                .map(one -> Choices.application(ask, one))
                .collect(java.util.stream.Collectors.joining("; "));
    }
}
