package rinsebell.web.form;

import java.util.List;
import java.util.stream.Stream;
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
        var presses = Stream.of("break", "back", "basin-closed", "basin-opened")
                .map(press -> Press.opens(ask.say("form.day." + press), "", "/day/" + press))
                .toList();
        var today = ask.salon().dayOf(ask.moment().now());
        var streams = Stream.concat(
                Stream.of(rinsebell.floor.Stream.day(today)),
                ask.moment().floor().visits().stream().map(visit -> rinsebell.floor.Stream.visit(visit.id())));
        var rows = new FactRows(ask).of(streams);
        var parts = List.of(
                new Part("", List.of(), presses),
                new Part(rows.isEmpty() ? ask.say("sheet.log.none") : ask.say("sheet.log"), rows, List.of()));
        return new SheetPage(ask.shell(title, Nav.DAY), title, ask.say("sheet.log.intro"), parts, List.of());
    }

    /** Every head, with what is usually forgotten about it while no server runs. */
    private static SheetPage catchUp(PageAsk ask) {
        var title = ask.say("form.day.caught-up");
        var gaps = ask.moment().floor().day().gaps().stream()
                .map(gap -> gap(ask, gap))
                .toList();
        var heads = ask.moment().floor().openVisits().stream()
                .map(visit -> head(ask, visit))
                .toList();
        var done = Press.sends(ask.say("form.day.caught-up.submit"), "", "/day/caught-up")
                .as(Press.Weight.MAIN);
        var parts = List.of(
                new Part(ask.say(gaps.isEmpty() ? "sheet.gaps.none" : "sheet.gaps"), gaps, List.of()),
                new Part(ask.say("sheet.heads"), heads, List.of(done)));
        return new SheetPage(ask.shell(title, Nav.DAY), title, ask.say("form.day.caught-up.intro"), parts, List.of());
    }

    private static Row gap(PageAsk ask, Day.Gap gap) {
        var until = ask.say(
                "sheet.gap", ask.moment().clock(gap.from()), ask.moment().clock(gap.until()));
        return new Row("", until, "", false, List.of());
    }

    private static Row head(PageAsk ask, Visit visit) {
        var base = "/visits/" + visit.id().value() + "/";
        var presses = Stream.of("strand", "scalp", "rinse", "already-on", "move", "leave")
                .filter(press -> isLikely(visit, press))
                .map(press -> Press.opens(ask.say("form.visits." + press), "", base + press))
                .toList();
        return new Row(
                ask.moment().placeSign(visit.place()), ask.moment().label(visit), on(ask, visit), false, presses);
    }

    private static boolean isLikely(Visit visit, String press) {
        return switch (press) {
            case "strand", "rinse" -> !visit.onHair().isEmpty();
            case "leave" -> visit.onHair().isEmpty();
            default -> true;
        };
    }

    private static String on(PageAsk ask, Visit visit) {
        return visit.onHair().stream()
                .map(one -> Choices.application(ask, one))
                .collect(java.util.stream.Collectors.joining("; "));
    }
}
