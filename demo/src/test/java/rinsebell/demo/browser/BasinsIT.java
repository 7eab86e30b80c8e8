package rinsebell.demo.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.demo.DemoHere;

/** The plan on the assistant's and the desk's screens: it changes, and yet stays where a finger or the keyboard is. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BasinsIT {
    private static final int MOST_STEPS = 100;

    @SuppressWarnings("NullAway.Init")
    private DemoHere demo;

    @SuppressWarnings("NullAway.Init")
    private Browsing browsing;

    @BeforeAll
    void opens() {
        browsing = Browsing.overPlainHttp();
    }

    @BeforeEach
    void starts(@TempDir Path folder) throws Exception {
        demo = DemoHere.in(folder.resolve("data"));
    }

    @AfterEach
    void stops() {
        browsing.putAway();
        demo.close();
    }

    @AfterAll
    void closes() {
        browsing.close();
    }

    /** Somebody burns and comes first; the list waits with that for as long as a finger rests on it. */
    @Test
    void thePlanDoesNotMoveUnderAFinger() throws IOException {
        var page = browsing.screen(Size.TABLET);
        page.navigate(demo.url() + "/basins");
        var cards = page.locator("#basin-next .card");
        var before = cards.allTextContents();
        var last = cards.last().getAttribute("id");
        var finger = cards.nth(1).locator(".what");
        finger.hover();
        page.mouse().down();
        burns(cards.last());
        assertThat(page.locator("#bells")).containsText(Pattern.compile("burning", Pattern.CASE_INSENSITIVE));
        assertThat(ids(cards)).hasSameSizeAs(before).last().isEqualTo(last);
        page.mouse().up();
        assertThat(cards.first()).hasAttribute("id", last);
        assertThat(browsing.violations(page)).isEmpty();
        assertThat(browsing.faults()).isEmpty();
    }

    /** Whoever works by the keyboard stays with the same head when that moves down the list. */
    @Tag("long")
    @Test
    void theKeyboardStaysWithItsHead() throws IOException {
        var page = browsing.screen(Size.TABLET);
        page.navigate(demo.url() + "/basins");
        var cards = page.locator("#basin-next .card");
        var first = cards.first().getAttribute("id");
        var pressed = page.locator("#" + first + " button").first();
        to(page, pressed);
        burns(cards.last());
        assertThat(cards.nth(1)).hasAttribute("id", first);
        assertThat(pressed).isFocused();
    }

    /** A turn is pinned to the other basin and given back to the plan, without a pointer, on a phone. */
    @Tag("long")
    @Test
    void aTurnIsPinnedByTheKeyboardAlone() {
        var page = browsing.screen(Size.PHONE);
        page.navigate(demo.url() + "/basins");
        var card = page.locator("#basin-next .card:has(a[href$='/turn'])").last();
        var id = card.getAttribute("id");
        var before = basin(card);
        var other = before.equals("A") ? "B" : "A";
        pins(page, id, other);
        page.navigate(demo.url() + "/basins");
        assertThat(page.locator("#" + id)).containsText("Pinned");
        assertThat(page.locator("#" + id + " .what strong")).containsText(Pattern.compile("basin " + other));
        Browsing.keep(page, "basins-pinned");
        pins(page, id, "");
        page.navigate(demo.url() + "/basins");
        assertThat(page.locator("#" + id)).not().containsText("Pinned");
        assertThat(browsing.violations(page)).isEmpty();
        assertThat(browsing.faults()).isEmpty();
    }

    private static String basin(Locator card) {
        return card.locator(".what strong").textContent().replaceFirst("(?s).*basin ([A-Z]).*", "$1");
    }

    private void pins(Page page, String id, String basin) {
        to(page, page.locator("#" + id + " a[href$='/turn']"));
        page.keyboard().press("Enter");
        page.waitForURL("**/turn");
        var chosen = page.locator("#basin input:checked");
        to(page, chosen.count() > 0 ? chosen : page.locator("#basin input").first());
        choose(page, basin);
        assertThat(browsing.violations(page)).isEmpty();
        to(page, page.locator(".submit .press.main"));
        page.keyboard().press("Enter");
        assertThat(page.locator("#answer")).not().isEmpty();
    }

    private static void choose(Page page, String value) {
        for (var steps = 0; steps < MOST_STEPS; steps++) {
            if (page.evaluate("() => document.activeElement.value").equals(value)
                    && page.evaluate("() => document.activeElement.checked").equals(true)) {
                return;
            }
            page.keyboard().press("ArrowRight");
        }
        throw new AssertionError("no choice is " + value);
    }

    /** At the desk: what was told is kept in one press; told too soon, the desk is warned; a walk-in gets an answer. */
    @Test
    void theDeskTellsAndAsks() throws IOException {
        var page = browsing.screen(Size.TABLET);
        page.navigate(demo.url() + "/desk");
        var href = page.locator(".desk-line:has(form) a.open").first().getAttribute("href");
        var row = page.locator(".desk-line:has(a.open[href='" + href + "'])");
        row.locator("form button").click();
        assertThat(row.locator(".tell")).containsText("told");
        assertThat(row.locator("form")).hasCount(0);
        assertThat(page.locator(".hours .told")).not().hasCount(0);

        var other = page.locator(".desk-line:has(form)").first();
        var visit = other.locator("form").getAttribute("action");
        var now = new ObjectMapper()
                .readTree(new Asking(demo.url()).page("/api/floor"))
                .get("now");
        var soon = Instant.parse(now.asText()).plusSeconds(60);
        press(visit, "{\"until\": \"" + soon + "\"}");
        page.navigate(demo.url() + "/desk");
        assertThat(page.locator(".overruns")).containsText("Tell them now");
        assertThat(browsing.violations(page)).isEmpty();
        Browsing.keep(page, "desk-told");

        page.getByText("Somebody asks for a place").click();
        page.waitForURL("**/welcome?place=bench");
        page.locator("#services input[value=cut]").check();
        page.locator("#least").fill("90");
        assertThat(page.locator(".preview .said")).containsText(Pattern.compile("chair \\d.* done \\d\\d:\\d\\d"));
        page.locator("#services input[value=bowl]").check();
        assertThat(page.locator(".preview .reasons")).containsText("Colour only with a skin test on record");
        Browsing.keep(page, "desk-asked");
        assertThat(browsing.violations(page)).isEmpty();
        assertThat(browsing.faults()).isEmpty();
    }

    private void burns(Locator card) throws IOException {
        press(card.locator("a.who").getAttribute("href") + "/discomfort", "{\"grade\": \"burning\"}");
    }

    /** As another device presses it. */
    private void press(String path, String body) throws IOException {
        new Asking(demo.url()).press("/api" + path, UUID.randomUUID().toString(), body);
    }

    private static List<String> ids(Locator cards) {
        return cards.all().stream().map(card -> card.getAttribute("id")).toList();
    }

    private static void to(Page page, Locator one) {
        for (var steps = 0; steps < MOST_STEPS; steps++) {
            if (one.evaluate("one => one === document.activeElement").equals(true)) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the keyboard does not reach " + one);
    }
}
