package rinsebell.demo.faults;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.page.LiveFloor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Crowd;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffMember;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.TimeStyle;
import rinsebell.web.Words;
import rinsebell.web.board.BellBoard;
import rinsebell.web.board.EarCode;
import rinsebell.web.board.Moment;

/** The model of a device rings for what the page's own script rings for, on the page as the server draws it. */
class RingModelIT {
    private static final String PLACE = "http://salon.test/";
    private static final String EMPTY_PAGE =
            "<!doctype html><html data-now=\"0\"><body><section id=\"bells\"></section></body></html>";
    private static final int FLOORS = 60;
    private static final int INSTANTS = 10;

    private final LiveFloor.Paper paper = new LiveFloor.Paper(new Pages(), Words.british(), Assets.under("/assets"));
    private final Dice dice = new Dice(7);

    @BeforeAll
    static void nobodyReadsOfFaults() {
        Silence.fall();
    }

    @Test
    void theModelRingsAsTheScriptDoes() {
        var floors = floors();
        assertThat(floors).hasSizeGreaterThan(20);
        var heard = 0;
        try (var playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
                var browser = playwright
                        .chromium()
                        .launch(new BrowserType.LaunchOptions()
                                .setExecutablePath(Path.of("/usr/bin/chromium"))
                                .setArgs(List.of("--no-sandbox", "--disable-gpu")))) {
            var page = browser.newPage();
            page.route(PLACE + "**", RingModelIT::serve);
            page.navigate(PLACE);
            for (var i = 0; i < FLOORS; i++) {
                heard += agree(page, dice.of(floors));
            }
        }
        assertThat(heard).as("turns that rang").isGreaterThan(FLOORS);
    }

    /** Floors of a day on which much went wrong. */
    private static List<Snapshot> floors() {
        var floors = new ArrayList<Snapshot>();
        Day.live(1, new Parts() {
            @Override
            List<Bell> sent(Snapshot snapshot, Instant since) {
                floors.add(snapshot);
                return snapshot.bells();
            }
        });
        return floors;
    }

    private static void serve(Route route) {
        var name = route.request().url().substring(PLACE.length());
        var answer = new Route.FulfillOptions();
        route.fulfill(
                name.isEmpty()
                        ? answer.setContentType("text/html").setBody(EMPTY_PAGE)
                        : answer.setContentType("text/javascript").setBodyBytes(script(name)));
    }

    private static byte[] script(String name) {
        try (var in = Pages.class.getResourceAsStream("/rinsebell/web/assets/" + name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int agree(Page page, Snapshot floor) {
        var rang = 0;
        page.evaluate("html => document.getElementById('bells').outerHTML = html", drawn(floor));
        for (var i = 0; i < INSTANTS; i++) {
            var ear = dice.of(ears(floor));
            var at = instant(floor);
            var byModel = byModel(floor, ear, at);
            assertThat(byScript(page, ear, at)).as("for %s at %d", ear, at).isEqualTo(byModel);
            rang += byModel.size();
        }
        return rang;
    }

    private String drawn(Snapshot floor) {
        var now = Instant.ofEpochMilli(instant(floor));
        var moment = new Moment(floor.floor(), floor::text, floor.bells(), Moment.Around.NOTHING, now, paper.words());
        var screen = new Screen(paper.words(), paper.assets(), new TimeStyle(Opening.ZONE, true), now, "run-1", null);
        return paper.pages().render(new BellBoard(moment).strip(), screen);
    }

    private static List<Ear> ears(Snapshot floor) {
        var ears = new ArrayList<Ear>(List.of(
                new Ear.Everything(),
                new Ear.At(Place.chair(1)),
                new Ear.At(Place.basin(1)),
                new Ear.Shared(Crowd.ASSISTANTS),
                new Ear.Shared(Crowd.STYLISTS),
                new Ear.Shared(Crowd.WALL)));
        floor.floor().salon().staff().stream()
                .map(StaffMember::id)
                .map(Ear.Of::new)
                .forEach(ears::add);
        return ears;
    }

    /** An hour about the newest fact, or to the millisecond the beginning of a turn. */
    private long instant(Snapshot floor) {
        var turns = floor.bells().stream()
                .flatMap(bell -> bell.rings().stream())
                .map(ring -> ring.from().toEpochMilli())
                .toList();
        var facts = floor.floor().facts();
        var newest = facts.get(facts.size() - 1).recorded().toEpochMilli();
        return turns.isEmpty() || dice.onceIn(3) ? newest + dice.below(3_600_000) : dice.of(turns) - dice.below(2);
    }

    private static TreeSet<String> byModel(Snapshot floor, Ear ear, long at) {
        var ringing = new TreeSet<String>();
        new Plan(1, 1, floor, floor.bells(), 0, 0).ringing(ear, at, turn -> ringing.add(id(turn)));
        return ringing;
    }

    private static String id(Turn turn) {
        var key = turn.bell().key();
        return "bell-%s-%d-%d@%d"
                .formatted(
                        key.kind().name().toLowerCase(Locale.ROOT),
                        key.subject(),
                        key.anchor(),
                        turn.key().from());
    }

    private static TreeSet<String> byScript(Page page, Ear ear, long at) {
        var ringing = (List<?>) page.evaluate(
                "async ([ear, at]) => { const ring = await import('/ring.js');"
                        + " return ring.ringing(ring.bells(), ear, at).map(one => `${one.id}@${one.turn.from}`); }",
                List.of(EarCode.of(ear), (double) at));
        var found = new TreeSet<String>();
        ringing.forEach(one -> found.add(String.valueOf(one)));
        return found;
    }
}
