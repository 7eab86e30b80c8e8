package rinsebell.web.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.Codes;
import rinsebell.web.board.SpanTelling;
import rinsebell.web.view.Field;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;

/** Pages about a client's stay. */
final class VisitPages {
    private static final List<String> MORE = List.of(
            "put-on",
            "already-on",
            "heat-on",
            "heat-off",
            "cover",
            "foils-out",
            "emulsified",
            "plan",
            "rinse",
            "wipe-off",
            "towel-dried",
            "lift",
            "stop",
            "gate",
            "move",
            "hand-over",
            "turn",
            "services",
            "service-begin",
            "service-end",
            "end-told",
            "label",
            "client",
            "leave");

    private VisitPages() {}

    static void enter(FormPages pages) {
        pages.enter(VisitForms.VISITS, Presses.PLAIN, VisitPages::welcome);
        pages.enter(VisitForms.VISITS, "gate", Nav.FLOOR, VisitPages::gate);
        pages.enter(VisitForms.VISITS, "move", Nav.FLOOR, VisitPages::move);
        pages.enter(VisitForms.VISITS, "hand-over", Nav.FLOOR, VisitPages::handOver);
        pages.enter(VisitForms.VISITS, "turn", Nav.FLOOR, VisitPages::turn);
        pages.enter(VisitForms.VISITS, "services", Nav.FLOOR, VisitPages::services);
        Stream.of("service-begin", "service-end")
                .forEach(press -> pages.enter(VisitForms.VISITS, press, Nav.FLOOR, ask -> service(ask, press)));
        pages.enter(VisitForms.VISITS, "end-told", Nav.DESK, VisitPages::told);
        pages.enter(VisitForms.VISITS, "label", Nav.FLOOR, VisitPages::label);
        pages.enter(
                VisitForms.VISITS,
                "leave",
                Nav.FLOOR,
                ask -> draft(ask, "leave").whenAndWho().form(at(ask, "leave"), back(ask)));
        pages.enter(VisitForms.VISITS, "more", VisitPages::more);
    }

    static FormDraft draft(PageAsk ask, String press) {
        return new FormDraft(ask, VisitForms.VISITS + "." + press);
    }

    static String at(PageAsk ask, String press) {
        return back(ask) + "/" + press;
    }

    static String back(PageAsk ask) {
        return "/visits/" + ask.id();
    }

    /** Somebody new, or somebody whose record was found first; its answers need not be asked again. */
    private static SheetPage welcome(PageAsk ask) {
        var client = Typed.number(ask.value("client", ""))
                .map(number -> new ClientId(number.longValue()))
                .flatMap(ask.clients()::card);
        var form = welcome(ask, client);
        return new SheetPage(
                ask.shell(form.title(), Nav.FLOOR),
                form.title(),
                "",
                List.of(whose(ask, client)),
                List.of(form.untitled()));
    }

    private static SheetPage.Part whose(PageAsk ask, Optional<ClientCard> client) {
        var find = Press.opens(
                ask.say(client.isPresent() ? "sheet.clients.other" : "sheet.clients.known"), "", "/clients");
        var rows = client.map(
                card -> new SheetPage.Row("", card.label(), ClientPages.told(ask, card), false, List.of(find)));
        return new SheetPage.Part("", rows.stream().toList(), client.isPresent() ? List.of() : List.of(find));
    }

    private static Form welcome(PageAsk ask, Optional<ClientCard> client) {
        var draft = new FormDraft(ask, "welcome")
                .text("label", client.map(ClientCard::label).orElse(""))
                .tiles("place", Choices.places(ask), "")
                .some("services", services(ask, Arrays.asList(Service.values())), List.of())
                .number(WalkInTelling.LEAST, "")
                .preview(new WalkInTelling(ask).preview())
                .group("")
                .list("stylist", Choices.working(ask), "")
                .list("helper", Choices.working(ask), "")
                .hidden(
                        "client",
                        client.map(card -> Choices.number(card.id().value())).orElse(""));
        var known = client.map(ClientCard::known).orElse(Gate.UNANSWERED);
        return questions(draft.group(ask.say("form.gate.questions")), ask, known)
                .group(ask.say("form.when"))
                .number("minutesAgo", "")
                .form("/visits", "/");
    }

    private static Form gate(PageAsk ask) {
        var stands = ask.visit().map(Visit::gate).orElse(Gate.UNANSWERED);
        var client = ask.visit().map(visit -> visit.stay().client()).orElse(null);
        var answers = ask.clients().known(client).over(stands);
        return questions(draft(ask, "gate"), ask, answers).whenAndWho().form(at(ask, "gate"), back(ask));
    }

    private static FormDraft questions(FormDraft draft, PageAsk ask, Gate known) {
        var test = Optional.ofNullable(known.skinTest());
        return draft.choice(
                        "skinTest",
                        Gate.SkinTest.Result.class,
                        test.map(Gate.SkinTest::result).orElse(null))
                .plain(
                        Field.Kind.DATE,
                        "skinTestOn",
                        ask.say("field.skinteston"),
                        test.map(Gate.SkinTest::applied).map(Object::toString).orElse(""))
                .choice("scalp", Gate.Scalp.class, known.scalp())
                .yesNo("earlierReaction", ask.say("field.earlierreaction"), yes(known.earlierReaction()))
                .choice("metal", Gate.Metal.class, known.metal())
                .yesNo("under16", ask.say("field.under16"), yes(known.under16()));
    }

    private static @Nullable Boolean yes(Gate.@Nullable YesNo answer) {
        return answer == null ? null : (Boolean) (answer == Gate.YesNo.YES);
    }

    private static Form move(PageAsk ask) {
        return draft(ask, "move")
                .tiles("place", Choices.places(ask), "")
                .whenAndWho()
                .form(at(ask, "move"), back(ask));
    }

    private static Form handOver(PageAsk ask) {
        return draft(ask, "hand-over")
                .list(
                        "stylist",
                        Choices.working(ask),
                        staff(ask.visit().map(visit -> visit.stay().stylist())))
                .list(
                        "helper",
                        Choices.working(ask),
                        staff(ask.visit().map(visit -> visit.stay().helper())))
                .whenAndWho()
                .form(at(ask, "hand-over"), back(ask));
    }

    /** Which basin, and before whom; what is left open is the plan's. */
    private static Form turn(PageAsk ask) {
        var pin = Optional.ofNullable(ask.moment().floor().day().pins().get(new VisitId(ask.id())));
        var basins = Stream.concat(
                        Stream.of(new FormDraft.Choice("", ask.say("choice.any_basin"))),
                        Choices.basins(ask).stream().filter(one -> !one.value().isEmpty()))
                .toList();
        var others = Choices.visits(ask).stream()
                .filter(one -> !one.value().equals(Choices.number(ask.id())))
                .toList();
        return draft(ask, "turn")
                .tiles(
                        "basin",
                        basins,
                        pin.flatMap(Pin::at)
                                .map(number -> new Place.Basin(number).letter())
                                .orElse(""))
                .list(
                        "before",
                        others,
                        pin.map(Pin::before)
                                .map(other -> Choices.number(other.value()))
                                .orElse(""))
                .who()
                .form(at(ask, "turn"), back(ask));
    }

    private static Form services(PageAsk ask) {
        var listed = ask.visit().map(visit -> visit.services().listed()).orElse(List.of());
        return draft(ask, "services")
                .some(
                        "services",
                        services(ask, Arrays.asList(Service.values())),
                        listed.stream().map(Codes::of).toList())
                .form(at(ask, "services"), back(ask));
    }

    private static Form service(PageAsk ask, String press) {
        var now = ask.visit()
                .flatMap(visit -> visit.services().now())
                .map(one -> Codes.of(one.service()))
                .orElse("");
        return draft(ask, press)
                .tiles("service", services(ask, ServiceForm.TOLD), now)
                .whenAndWho()
                .form(at(ask, press), back(ask));
    }

    /** Begins with what is almost sure, for nobody minds being done sooner. */
    private static Form told(PageAsk ask) {
        var moment = ask.moment();
        var sure = ask.visit()
                .flatMap(visit -> moment.floor().turnaround(moment.now()).end(visit.id()));
        return draft(ask, "end-told")
                .plain(
                        Field.Kind.TIME,
                        ServiceForm.UNTIL,
                        ask.say("field.until"),
                        sure.map(end -> SpanTelling.typed(moment, end.latest())).orElse(""))
                .whenAndWho()
                .form(at(ask, "end-told"), back(ask));
    }

    private static List<FormDraft.Choice> services(PageAsk ask, List<Service> some) {
        return some.stream()
                .map(service ->
                        new FormDraft.Choice(Codes.of(service), ask.moment().say(service)))
                .toList();
    }

    private static String staff(Optional<StaffId> known) {
        return known.map(staff -> Choices.number(staff.value())).orElse("");
    }

    private static Form label(PageAsk ask) {
        var now = ask.visit()
                .map(visit -> ask.moment().texts().apply(visit.label()))
                .orElse("");
        return draft(ask, "label").text("label", now).form(at(ask, "label"), back(ask));
    }

    /** What is pressed more rarely, and the log of this head. */
    private static SheetPage more(PageAsk ask) {
        var presses = new ArrayList<Press>();
        presses.add(Press.opens(ask.say("form.mixtures"), "", "/mixtures?visit=" + ask.id()));
        MORE.stream()
                .map(press -> Press.opens(ask.say("form.visits." + press), "", at(ask, press)))
                .forEach(presses::add);
        var stream = rinsebell.floor.Stream.visit(new rinsebell.floor.visit.VisitId(ask.id()));
        var log = new SheetPage.Part(ask.say("sheet.log"), new FactRows(ask.moment()).of(Stream.of(stream)), List.of());
        var title = ask.head() + ": " + ask.say("press.more");
        return new SheetPage(
                ask.shell(title, Nav.FLOOR),
                title,
                "",
                List.of(new SheetPage.Part("", List.of(), presses), log),
                List.of());
    }
}
