package rinsebell.web.form;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.client.EarlierBowl;
import rinsebell.floor.client.EarlierVisit;
import rinsebell.floor.client.KnownClient;
import rinsebell.floor.salon.Policy.Keeping;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Visit;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.form.SheetPage.Search;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.View;

/** Pages about people who come again: finding a record, reading it, linking a visit to it. */
final class ClientPages {
    /** Sent, not written into the address: letters of somebody's name would stay in the history of the browser. */
    private static final String FIND = "/find";

    private static final String RECORDS = "/clients";
    private static final String LETTERS = "letters";
    private static final String ERASED = "erased";
    private static final int MOST_SHOWN = 30;

    /** ISO 8601, so that no month is taken for a day. */
    private static final DateTimeFormatter DATE = DateTimeFormatter.ISO_LOCAL_DATE;

    private ClientPages() {}

    static void enter(FormPages pages) {
        pages.enter(ClientForms.CLIENTS, "list", ClientPages::list);
        pages.enter(ClientForms.CLIENTS, Presses.PLAIN, ClientPages::list);
        pages.enter(ClientForms.CLIENTS, "card", ClientPages::card);
        pages.enter(ClientForms.CLIENTS, ClientForms.NOTE, ClientPages::card);
        pages.enter(ClientForms.CLIENTS, ClientForms.ERASE, ClientPages::erase);
        pages.enter(VisitForms.VISITS, "client", ClientPages::link);
    }

    private static View list(PageAsk ask) {
        var title = ask.say("sheet.clients");
        var letters = ask.value(LETTERS, "");
        var rows = ask.clients().search(letters, MOST_SHOWN).stream()
                .map(client -> found(ask, client, welcome(ask, client.id(), client.label())))
                .toList();
        return new SheetPage(
                ask.shell(title, Nav.FLOOR),
                title,
                erasedJustNow(ask) + ask.say("sheet.clients.intro"),
                search(ask, RECORDS + FIND, letters),
                List.of(new Part(
                        ask.say(rows.isEmpty() ? "sheet.clients.none" : "sheet.clients.found"), rows, List.of())),
                List.of(begin(ask, "")),
                List.of());
    }

    /** What an erasing led to. */
    private static String erasedJustNow(PageAsk ask) {
        return ask.value(ERASED, "").isEmpty() ? "" : ask.say("sheet.clients.gone", copiesUntil(ask)) + " ";
    }

    private static String copiesUntil(PageAsk ask) {
        return DATE.format(ask.moment().now().plus(Keeping.COPIES).atZone(zone(ask)));
    }

    private static Search search(PageAsk ask, String address, String letters) {
        return new Search(address, ask.say("field.letters"), letters, ask.say("sheet.clients.search"));
    }

    private static Press welcome(PageAsk ask, ClientId client, String label) {
        return Press.opens(ask.say("sheet.clients.welcome", label), "", "/welcome?client=" + client.value());
    }

    private static Row found(PageAsk ask, KnownClient client, Press press) {
        var open = Press.opens(
                ask.say("sheet.clients.open", client.label()),
                "",
                RECORDS + "/" + client.id().value());
        return new Row("", client.label(), last(ask, client), false, List.of(press, open));
    }

    private static String last(PageAsk ask, KnownClient client) {
        return client.last()
                .map(at -> ask.say("sheet.clients.last", DATE.format(at.atZone(zone(ask)))))
                .orElse(ask.say("sheet.clients.never"));
    }

    private static ZoneId zone(PageAsk ask) {
        return ask.salon().zone();
    }

    private static Form begin(PageAsk ask, String label) {
        var draft = new FormDraft(ask, "clients").text("label", label);
        var visit = ask.visit().map(known -> Choices.number(known.id().value())).orElse(ask.value("visit", ""));
        return draft.hidden("visit", visit).form(RECORDS, visit.isEmpty() ? "/welcome" : "/visits/" + visit);
    }

    /** Whose record a visit belongs to, in one press; and a record that begins with this visit. */
    private static View link(PageAsk ask) {
        var label = ask.visit()
                .map(visit -> ask.moment().texts().apply(visit.label()))
                .orElse("");
        var letters = ask.value(LETTERS, "");
        var card = linked(ask);
        var linked = card.map(known -> linked(ask, known)).or(() -> erased(ask)).stream()
                .toList();
        var rows = ask.clients().search(letters, MOST_SHOWN).stream()
                .filter(client ->
                        card.filter(known -> known.id().equals(client.id())).isEmpty())
                .map(client -> found(ask, client, links(ask, client)))
                .toList();
        var parts = new ArrayList<Part>();
        if (!linked.isEmpty()) {
            parts.add(new Part(ask.say("sheet.clients.linked"), linked, List.of()));
        }
        parts.add(new Part(ask.say(rows.isEmpty() ? "sheet.clients.none" : "sheet.clients.found"), rows, List.of()));
        var title = ask.head() + ": " + ask.say("form.visits.client");
        return new SheetPage(
                ask.shell(title, Nav.FLOOR),
                title,
                "",
                search(ask, VisitPages.at(ask, "client") + FIND, letters),
                parts,
                linked.isEmpty() ? List.of(begin(ask, label)) : List.of(),
                List.of());
    }

    private static Optional<ClientCard> linked(PageAsk ask) {
        return ask.visit()
                .map(Visit::stay)
                .flatMap(stay -> Optional.ofNullable(stay.client()))
                .flatMap(ask.clients()::card);
    }

    /** A visit keeps the number of a record that is no more. */
    private static Optional<Row> erased(PageAsk ask) {
        return ask.visit()
                .filter(visit -> visit.stay().client() != null)
                .map(visit -> new Row("", ask.say("sheet.clients.erased"), "", true, List.of(unlinks(ask))));
    }

    private static Press unlinks(PageAsk ask) {
        return Press.sends(
                ask.say("sheet.clients.unlink"), "", VisitPages.at(ask, "client"), new Press.Hidden("client", ""));
    }

    private static Row linked(PageAsk ask, ClientCard card) {
        var open = Press.opens(
                ask.say("sheet.clients.open", card.label()),
                "",
                RECORDS + "/" + card.id().value());
        return new Row("", card.label(), told(ask, card), false, List.of(open, unlinks(ask)));
    }

    private static Press links(PageAsk ask, KnownClient client) {
        return Press.sends(
                        ask.say("sheet.clients.link", client.label()),
                        "",
                        VisitPages.at(ask, "client"),
                        new Press.Hidden("client", Choices.number(client.id().value())))
                .as(Press.Weight.MAIN);
    }

    /** What the gate need not ask again, in one line. */
    static String told(PageAsk ask, ClientCard card) {
        return new FactDetail(ask.moment()).gate(card.known()).collect(Collectors.joining(", "));
    }

    private static View card(PageAsk ask) {
        var card = ask.clients().card(new ClientId(ask.id()));
        var title = card.map(ClientCard::label).orElse("");
        var welcome = card.map(known -> welcome(ask, known.id(), known.label()).as(Press.Weight.MAIN)).stream()
                .toList();
        var notes = card.stream()
                .flatMap(known -> known.notes().stream())
                .map(note -> note(ask, note))
                .toList();
        var visits = card.stream()
                .flatMap(known -> known.visits().stream())
                .map(visit -> visit(ask, visit))
                .toList();
        return new SheetPage(
                ask.shell(title, Nav.FLOOR),
                title,
                card.map(known -> told(ask, known)).orElse(""),
                null,
                Stream.concat(
                                Stream.of(
                                        new Part("", List.of(), welcome),
                                        recipes(ask),
                                        new Part(
                                                ask.say(notes.isEmpty() ? "sheet.notes.none" : "sheet.notes"),
                                                notes,
                                                List.of())),
                                visits.isEmpty()
                                        ? Stream.of(new Part(ask.say("sheet.visits.none"), List.of(), List.of()))
                                        : visits.stream())
                        .toList(),
                List.of(noting(ask)),
                List.of(new Part("", List.of(), List.of(everything(ask), privacy(ask), erasing(ask)))));
    }

    private static Part recipes(PageAsk ask) {
        var rows = RecipePages.rows(ask, new ClientId(ask.id()), null);
        var keep = Press.opens(ask.say("form.recipes"), "", RecipePages.RECIPES + "/new?client=" + ask.id());
        var file = Press.opens(ask.say("sheet.recipes.file"), "", "/api/recipe-file?client=" + ask.id());
        return new Part(
                ask.say(rows.isEmpty() ? "sheet.recipes.none" : "sheet.recipes.theirs"),
                rows,
                rows.isEmpty() ? List.of(keep) : List.of(keep, file));
    }

    private static Press everything(PageAsk ask) {
        return Press.opens(ask.say("everything.title"), "", at(ask, "export"));
    }

    private static Press privacy(PageAsk ask) {
        return Press.opens(ask.say("privacy.title"), "", "/privacy");
    }

    private static Press erasing(PageAsk ask) {
        return Press.opens(ask.say("form.clients.erase"), "", at(ask, ClientForms.ERASE));
    }

    /** What can't be undone is asked once more, on a page of its own. */
    private static View erase(PageAsk ask) {
        var title = ask.clients()
                .card(new ClientId(ask.id()))
                .map(ClientCard::label)
                .orElse("");
        var sure = new FormDraft(ask, "clients.erase").form(at(ask, ClientForms.ERASE), RECORDS + "/" + ask.id());
        var copies = ask.say("sheet.clients.copies", copiesUntil(ask));
        return new SheetPage(ask.shell(title, Nav.FLOOR), title, copies, null, List.of(), List.of(sure), List.of());
    }

    private static String at(PageAsk ask, String press) {
        return RECORDS + "/" + ask.id() + "/" + press;
    }

    private static Row note(PageAsk ask, ClientNote note) {
        return new Row("", ask.moment().say(note.kind()), DATE.format(note.on()), false, List.of());
    }

    private static Form noting(PageAsk ask) {
        LocalDate today = ask.salon().dayOf(ask.moment().now());
        return new FormDraft(ask, "clients.note")
                .choice("kind", ask.say("field.noted"), ClientNote.Kind.class, null)
                .plain(rinsebell.web.view.Field.Kind.DATE, "on", ask.say("field.on"), DATE.format(today))
                .form(at(ask, ClientForms.NOTE), RECORDS);
    }

    private static Part visit(PageAsk ask, EarlierVisit visit) {
        var day = DATE.format(visit.arrived().atZone(zone(ask)));
        var bowls = visit.bowls().stream().map(bowl -> bowl(ask, bowl));
        var complaints = visit.complaints().stream()
                .map(grade -> new Row("", ask.moment().say(grade), "", false, List.of()));
        var gate = new FactDetail(ask.moment()).gate(visit.gate()).collect(Collectors.joining(", "));
        var answers = Stream.of(gate)
                .filter(said -> !said.isEmpty())
                .map(said -> new Row("", ask.say("form.gate.questions"), said, false, List.<Press>of()));
        return new Part(
                ask.say("sheet.visits.of", day),
                Stream.of(bowls, complaints, answers).flatMap(rows -> rows).toList(),
                List.of());
    }

    /** What was in it, why, where it went on and for how long. */
    private static Row bowl(PageAsk ask, EarlierBowl bowl) {
        var recipe = bowl.portions().stream()
                .map(part -> ask.say("fact.portion", part.grams().amount().toPlainString(), part.product()))
                .collect(Collectors.joining(" + "));
        var uses = bowl.uses().stream().map(use -> use(ask, use));
        var detail =
                Stream.concat(Stream.of(ask.moment().say(bowl.reason())), uses).collect(Collectors.joining(" · "));
        return new Row(
                ask.moment().clock(bowl.mixed()),
                recipe.isEmpty() ? ask.say("bowl.unknown") : recipe,
                detail,
                false,
                List.of());
    }

    private static String use(PageAsk ask, EarlierBowl.Use use) {
        var area = ask.moment().say(use.area());
        return use.time()
                .map(time -> ask.say("sheet.visits.use", area, time.toMinutes()))
                .orElse(area);
    }
}
