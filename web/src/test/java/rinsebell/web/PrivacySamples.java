package rinsebell.web;

import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.salon.Role;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;
import rinsebell.web.access.PlainPage;
import rinsebell.web.board.Moment;
import rinsebell.web.form.EverythingPage;
import rinsebell.web.form.SheetPage;
import rinsebell.web.privacy.Kept;
import rinsebell.web.privacy.PrivacyTelling;
import rinsebell.web.privacy.PrivacyTelling.Past;
import rinsebell.web.privacy.PrivacyTelling.Run;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;

/** What is kept about people, and all that is kept about one. */
final class PrivacySamples {
    private static final Instant TEN = Saturday.TEN;
    private static final Duration DAY = Duration.ofDays(1);

    private PrivacySamples() {}

    static PlainPage page() {
        var runs = List.of(
                new Run(TEN.minusSeconds(21_600), TEN.minus(DAY.multipliedBy(3)), 0, 41, 0, 0),
                new Run(TEN.minusSeconds(21_600).minus(DAY), TEN.minus(DAY), 2, 37, 16, 9));
        return page(new Past(
                runs, TEN.minus(DAY), false, new PrivacyTelling.Times(DAY.multipliedBy(400), DAY.multipliedBy(400))));
    }

    static PlainPage nothing() {
        return page(new Past(
                List.of(), null, false, new PrivacyTelling.Times(DAY.multipliedBy(400), DAY.multipliedBy(400))));
    }

    private static PlainPage page(Past past) {
        var open = Map.<String, List<Role>>of("matter.floor", List.of());
        var allowed = Stream.of(Kept.values())
                .flatMap(kept -> kept.matters().stream())
                .distinct()
                .collect(Collectors.toMap(
                        Function.identity(), matter -> open.getOrDefault(matter, List.of(Role.STYLIST, Role.MANAGER))));
        var telling = new PrivacyTelling(moment(Story.begins()), allowed, past);
        return telling.page(Samples.shell("What is kept about people", Nav.SETUP, Look.LIGHT, "bells"));
    }

    static SheetPage everything() {
        var client = new ClientId(7);
        var story = Story.begins();
        var head = story.at("09:00").arrives(client);
        var on = head.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.REGROWTH));
        story.at("09:40");
        head.rinses(on);
        head.leaves();
        var moment = moment(story);
        var visit = story.floor().visit(head.id()).orElseThrow();
        var stay =
                new EverythingPage.Stay(moment, visit, story.floor().facts(rinsebell.floor.Stream.visit(visit.id())));
        var notes = List.of(new ClientNote(ClientNote.Kind.REACTION, Saturday.DATE.minusDays(9)));
        var page = new EverythingPage(
                moment,
                new EverythingPage.Client(
                        client,
                        "M. A.",
                        TEN.minus(DAY),
                        notes,
                        List.of(stay),
                        List.of(new EverythingPage.Look(TEN, null, "matter.history", false))));
        return page.page(Samples.shell("Everything about them", Nav.FLOOR, Look.LIGHT, "bells"));
    }

    private static Moment moment(Story story) {
        var floor = story.floor();
        return new Moment(floor, id -> "text " + id.seq(), floor.bells(), TEN, Words.british());
    }
}
