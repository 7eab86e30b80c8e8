package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tablet whose server has died: its screens open, ring and take presses, and the server hears of them later. */
class OfflineIT {
    private static final String MODULE = "const of = (name) => import(document.querySelector('script[type=module]').src"
            + ".replace('main.js', name)); ";

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void opensRingsAndTakesPressesWithoutTheServer(@TempDir Path folder) throws Exception {
        try (var demo = RunningDemo.in(folder.resolve("data"));
                var browsing = new Browsing()) {
            var tablet = browsing.screen(Size.TABLET);
            var head = someHead(tablet, demo);
            var before = complaints(demo, head);
            demo.kill();
            tablet.reload();
            assertOpensAndRings(tablet);
            press(tablet);
            demo.startAgain();
            allSent(tablet);
            assertThat(complaints(demo, head)).isEqualTo(before + 1);
            pressFromBeforeTheVisit(tablet, head);
            allSent(tablet);
            assertThat(unsure(demo, head)).isEqualTo(1);
        }
    }

    private static String someHead(Page tablet, RunningDemo demo) {
        tablet.navigate(demo.url() + "/");
        var head = tablet.locator("main a[href^='/visits/']").first().getAttribute("href");
        tablet.navigate(demo.url() + head);
        tablet.waitForCondition(
                () -> (boolean) tablet.evaluate("async (path) => Boolean(await caches.match(path))", head));
        return head;
    }

    private static void assertOpensAndRings(Page tablet) {
        tablet.waitForFunction("() => document.getElementById('link').textContent");
        assertThat(tablet.locator("#link").textContent())
                .matches("as of \\d\\d:\\d\\d, not connected, clocks still run");
        var clock = "() => [...document.querySelectorAll('[data-due]')].map(one => one.textContent).join()";
        var before = tablet.evaluate(clock);
        tablet.waitForFunction("before => (" + clock + ")() !== before", before);
        // Everything that the plan has rings on a device that listens for everybody.
        tablet.evaluate("async () => { " + MODULE + "(await of('device.js')).choose({ ear: 'all' }); }");
        tablet.waitForCondition(() -> holds(
                tablet,
                "const { bells, ringing } = await of('ring.js'); const { now } = await of('clock.js');"
                        + " const [loudest] = ringing(bells(), 'all', now());"
                        + " return loudest?.turn.urgency === document.documentElement.dataset.ring;"));
    }

    private static void press(Page tablet) {
        tablet.locator("main form[action$='/discomfort'] button").first().click();
        tablet.locator("#kept .waiting").waitFor();
    }

    /** What the tablet's clock says was pressed yesterday, when nobody sat there. */
    private static void pressFromBeforeTheVisit(Page tablet, String head) {
        tablet.evaluate(
                "async (head) => { " + MODULE + "const { add } = await of('queue.js');"
                        + " const { freshId } = await of('press.js'); const id = freshId(); const date = Date.now() - 86400000;"
                        + " await add('presses', { id, action: location.origin + head + '/scalp', label: 'Scalp', page: 'gone',"
                        + " body: `finding=fine&press=${id}`, again: false, pressed: 0, sure: false, at: 0, date });"
                        + " (await of('send.js')).send(); }",
                head);
    }

    private static void allSent(Page tablet) {
        tablet.waitForCondition(
                () -> holds(tablet, "return (await (await of('queue.js')).all('presses')).length === 0;"));
        tablet.locator("#kept .waiting").waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED));
    }

    private static boolean holds(Page tablet, String what) {
        return (boolean) tablet.evaluate("async () => { " + MODULE + what + " }");
    }

    private long complaints(RunningDemo demo, String head) throws Exception {
        return count(demo, head, "\"kind\":\"complained\"");
    }

    private long unsure(RunningDemo demo, String head) throws Exception {
        return count(demo, head, "\"unsure\":true");
    }

    private long count(RunningDemo demo, String head, String what) throws Exception {
        var visit = head.substring(head.lastIndexOf('/') + 1);
        var log = HttpRequest.newBuilder(URI.create(demo.url() + "/api/log?visit=" + visit))
                .build();
        var told = client.send(log, HttpResponse.BodyHandlers.ofString()).body();
        return Pattern.compile(Pattern.quote(what)).matcher(told).results().count();
    }
}
