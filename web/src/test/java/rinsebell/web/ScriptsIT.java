package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page's own scripts in a real browser. */
class ScriptsIT extends SamplePages {
    private static final Pattern PRESS = Pattern.compile("(?:^|&)press=([^&]*)");

    private static final Predicate<String> STREAM = address -> address.contains("/feed?");
    private static final Predicate<String> ONCE = address -> address.contains("/feed/once?board=");

    private Page page;

    @BeforeEach
    void open() {
        server.presses.clear();
        page = chromium.page();
        page.setDefaultTimeout(10_000);
    }

    @AfterEach
    void close() {
        Chromium.close(page);
    }

    private Object in(String module, String code) {
        return in(page, module, code);
    }

    @Test
    void theRibbonPansWhereTheServerDrewIt() {
        page.navigate(server.url("floor"));
        var middle = page.evaluate("() => { const line = document.querySelector('.axis [data-now-line]');"
                + " return Math.round(parseFloat(line.getAttribute('x1'))); }");
        assertThat(middle).isEqualTo(37);
        // A mark at the instant that is shown now stands on the line, whatever the screen's width.
        assertThat(page.evaluate("() => { const axis = document.querySelector('.axis');"
                        + " const now = axis.querySelector('[data-now-line]').getBoundingClientRect().left;"
                        + " const tick = [...axis.querySelectorAll('text')].find(text => text.textContent === '14:20');"
                        + " const box = tick.getBoundingClientRect();"
                        + " const px = axis.clientWidth / Math.min(10800, Math.max(2700, axis.clientWidth * 7.2));"
                        + " return Math.abs(now - (box.left + box.width / 2) - 168 * px) < 4 * px + 2; }"))
                .isEqualTo(true);
    }

    @ParameterizedTest
    @CsvSource({
        "k3f9-1040, false, an older one of the same run",
        "k3f9-1041, true, the same again",
        "k3f9-1042, true, a newer one",
        "z1z1-3, true, another run while none is known"
    })
    void anOlderFragmentNeverReplacesANewerOne(String stamp, boolean shown, String why) {
        page.navigate(server.url("floor"));
        in(
                "feed.js",
                "module.show('row-1', '" + stamp + "', '<li class=\"row\" id=\"row-1\" data-n=\"" + stamp
                        + "\">fresh</li>');");
        assertThat(page.locator("#row-1").textContent().equals("fresh")).as(why).isEqualTo(shown);
    }

    @Test
    void nothingIsReplacedUnderAFingerAndTheFocusStays() {
        page.navigate(server.url("chair"));
        var press = page.locator(".presses button").first();
        press.focus();
        press.dispatchEvent("pointerdown");
        in(
                "feed.js",
                "const old = document.getElementById('visit-71');"
                        + " const html = old.outerHTML.replace('k3f9-1041', 'k3f9-1042').replace('Odile', 'Pavel');"
                        + " module.show('visit-71', 'k3f9-1042', html);");
        assertThat(page.locator("#visit-71 .staff").textContent()).isEqualTo("Odile");
        press.dispatchEvent("pointerup");
        page.waitForFunction("() => document.querySelector('#visit-71 .staff').textContent === 'Pavel'");
        assertThat(page.evaluate(
                        "() => document.activeElement.tagName + document.activeElement.form.getAttribute('action')"))
                .isEqualTo("BUTTON/visits/71/rinses");
    }

    @Test
    void eachPressHasAnIdOfItsOwn() {
        page.navigate(server.url("chair"));
        for (var i = 0; i < 2; i++) {
            page.evaluate("() => document.getElementById('answer').replaceChildren()");
            page.locator(".presses button").first().click();
            page.locator("#answer .said").waitFor();
        }
        assertThat(ids(server.presses)).hasSize(2).doesNotHaveDuplicates().allMatch(id -> id.matches("[0-9a-f]{32}"));
        assertThat(server.presses.get(0)).containsPattern("&age=\\d{1,4}$");
    }

    /**
     * No answer says nothing about whether it arrived, so the same press goes again under the same id. The line is cut
     * in the browser, since Chromium by itself repeats a request on a line that the server dropped.
     */
    @Test
    void aPressWithoutAnAnswerIsSentAgainUnderItsId() {
        var cut = new ArrayList<String>();
        page.navigate(server.url("chair"));
        page.route("**/rinses", route -> {
            if (cut.size() < 2) {
                cut.add(route.request().postData());
                route.abort("connectionreset");
            } else {
                route.resume();
            }
        });
        page.locator(".presses button").first().click();
        page.waitForFunction("() => document.getElementById('answer').textContent.includes('Put on 14:22')");
        assertThat(cut).hasSize(2);
        assertThat(ids(server.presses)).hasSize(1).containsOnlyElementsOf(ids(cut));
    }

    /** A tablet that is loaded again while the line is down still knows what was pressed, and when. */
    @Test
    void aPressWithoutAnAnswerOutlivesItsPage() {
        var cut = new ArrayList<String>();
        var isDown = new AtomicBoolean(true);
        page.navigate(server.url("chair"));
        page.route("**/rinses", route -> {
            if (isDown.get()) {
                cut.add(route.request().postData());
                route.abort("connectionrefused");
            } else {
                route.resume();
            }
        });
        page.locator(".presses button").first().click();
        page.locator("#kept .waiting").waitFor();
        page.reload();
        isDown.set(false);
        page.waitForFunction("() => document.getElementById('answer').textContent.includes('saved now')");
        assertThat(ids(server.presses)).hasSize(1).containsOnly(ids(cut).get(0));
    }

    /** The feed is not served here, so the page finds itself alone. */
    @Test
    void saysSinceWhenItIsNotConnectedAndClocksRunOn() {
        page.clock().install();
        page.navigate(server.url("chair"));
        var before = page.locator(".next .digits").textContent();
        page.clock().runFor(13_000);
        page.waitForFunction("() => document.getElementById('link').classList.contains('stale')");
        assertThat(page.locator("#link").textContent()).isEqualTo("not connected since 14:22, clocks still run");
        assertThat(page.locator(".next .digits").textContent()).isNotEqualTo(before);
    }

    /** The server grants one browser four streams on HTTP/1.1; a page beyond them must not stand still, and says so. */
    @Test
    void aPageThatIsRefusedAStreamAsksForWhatItBeginsWith() {
        page.route(STREAM, route -> route.fulfill(new Route.FulfillOptions().setStatus(429)));
        page.route(ONCE, route -> route.fulfill(beginning(Samples.NOW.toEpochMilli())));
        page.navigate(server.url("floor"));
        page.waitForFunction("() => document.getElementById('row-1').textContent === 'asked: for'");
        assertThat(page.locator("#doubt").isVisible()).isTrue();
        assertThat(page.locator("#link").getAttribute("class")).doesNotContain("stale");
        assertThat(page.locator("#link").textContent()).startsWith("connected, asks every few seconds:");
    }

    /** Something else at the server's address may answer anything with 200. */
    @Test
    void whatAStrangerAnswersIsNotShown() {
        var asked = new AtomicInteger();
        page.route(STREAM, route -> route.fulfill(new Route.FulfillOptions().setStatus(429)));
        page.route(ONCE, route -> {
            asked.incrementAndGet();
            route.fulfill(beginning(Samples.NOW.toEpochMilli()).setHeaders(Map.of()));
        });
        page.navigate(server.url("floor"));
        page.waitForCondition(() -> asked.get() > 1);
        assertThat(page.locator("#row-1").textContent()).doesNotContain("asked: for");
    }

    /** A browser that has no connection left makes a stream wait without a word, so its page asks after 5 s. */
    @ParameterizedTest
    @CsvSource({"4000, 0", "7000, 1"})
    void aStreamThatDoesNotOpenIsLost(int millis, int asked) {
        var opened = new AtomicInteger();
        page.clock().install();
        page.route(STREAM, route -> opened.incrementAndGet());
        page.route(ONCE, route -> route.fulfill(beginning(server.now())));
        page.navigate(server.url("floor"));
        page.waitForCondition(() -> opened.get() > 0);
        page.clock().runFor(millis);
        page.waitForTimeout(0);
        if (asked > 0) {
            page.waitForFunction("() => document.getElementById('row-1').textContent === 'asked: for'");
        }
        assertThat(page.locator("#row-1", new Page.LocatorOptions().setHasText("asked: for"))
                        .count())
                .isEqualTo(asked);
    }

    private static Route.FulfillOptions beginning(long now) {
        return new Route.FulfillOptions()
                .setHeaders(SampleServer.OURS)
                .setContentType("text/event-stream")
                .setBody("retry: 1000\n\nevent: beat\nid: k3f9-1042\ndata: {\"now\":" + now
                        + ",\"speed\":1,\"clock\":\"set\"}\n\nevent: fragment\n"
                        + "id: k3f9-1042\ndata: {\"id\":\"row-1\",\"n\":1042,\"html\":"
                        + "\"<li id=\\\"row-1\\\" data-n=\\\"k3f9-1042\\\">asked: for</li>\"}\n\n");
    }

    /** No feed is served here: what falls due rings by the plan that the page carries, and is drawn from it. */
    @Test
    void ringsByItselfWhenItIsAlone() {
        page.clock().install();
        page.navigate(server.url("floor"));
        page.evaluate("() => document.documentElement.dataset.ear = 'staff-3'");
        page.clock().runFor(5_000);
        assertThat(ring()).isEqualTo("calm");
        page.clock().runFor(15_000);
        page.waitForFunction("() => document.documentElement.hasAttribute('data-alone')");
        assertThat(ring()).isEqualTo("high");
        assertThat(page.locator("#bells > ol:not(.rung) .bell.high").textContent())
                .contains("chair 3", "rinse now");
    }

    private Object ring() {
        return page.evaluate("() => document.documentElement.dataset.ring");
    }

    @Test
    void soundIsOffUntilTheFirstTouch() {
        page.navigate(server.url("chair"));
        assertThat(page.locator(".sound").textContent()).isEqualTo("Sound is off: touch to ring");
        page.locator("main h1").click();
        page.waitForFunction("() => document.querySelector('.sound').textContent === 'Sound not tried today'");
    }

    @Test
    void worksWithoutScript() {
        var options = new Browser.NewContextOptions().setJavaScriptEnabled(false);
        try (var context = chromium.browser.newContext(options)) {
            var plain = context.newPage();
            plain.navigate(server.url("chair"));
            assertThat(plain.locator(".next .digits").textContent()).isEqualTo("07:12");
            plain.locator(".presses button").first().click();
            assertThat(server.presses).containsExactly("press=press-of-the-page");
        }
    }

    private static List<String> ids(List<String> presses) {
        return presses.stream()
                .map(PRESS::matcher)
                .filter(found -> found.find())
                .map(found -> found.group(1))
                .toList();
    }
}
