package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Screens that the browser keeps, so that they open when nothing answers. There is no feed here. */
class KeptIT extends SamplePages {
    private static final String KEPT =
            "async (path) => Boolean(await (await caches.open('rinsebell-pages')).match(path))";

    private static final String ERASINGS = "async (path) => (await (await caches.open('rinsebell-pages')).match(path))"
            + "?.headers.get('Rinsebell-Erased')";

    private BrowserContext tablet;
    private Page page;

    @BeforeEach
    void open() {
        server.presses.clear();
        server.keeps = true;
        server.down = false;
        server.isAnothers = false;
        server.erasings = 0;
        server.failing.clear();
        server.feed = "";
        tablet = chromium.device();
        page = tablet.newPage();
        page.setDefaultTimeout(20_000);
    }

    @AfterEach
    void close() {
        Chromium.close(tablet);
        server.keeps = false;
        server.down = false;
    }

    private void visit(String path) {
        page.navigate(server.url(path));
        untilKept(path);
    }

    /** As after a visit; the page says at once what it says by itself when it has settled. */
    private void keep(String path) {
        page.navigate(server.url(path));
        page.evaluate("async () => (await navigator.serviceWorker.ready).active.postMessage('keep')");
        untilKept(path);
    }

    private void untilKept(String path) {
        page.waitForCondition(() -> (boolean) page.evaluate(KEPT, "/" + path));
    }

    private String link() {
        page.waitForFunction("() => document.getElementById('link')?.textContent");
        return page.locator("#link").textContent();
    }

    /** The samples are drawn at 14:22. */
    @Test
    void aScreenOpensWithoutTheServerAndSaysOfWhenItIs() {
        visit("desk");
        server.down = true;
        page.reload();
        assertThat(link()).isEqualTo("as of 14:22, not connected, clocks still run");
        assertThat(page.evaluate("() => document.documentElement.hasAttribute('data-alone')"))
                .isEqualTo(true);
        server.down = false;
        page.reload();
        assertThat(page.evaluate("() => document.documentElement.dataset.kept")).isNull();
    }

    @Test
    void itsClocksGoByTheLastTimeThatTheServerTold() {
        keep("desk");
        page.waitForFunction("() => localStorage.getItem('rinsebell-clock')");
        page.evaluate("() => { const told = JSON.parse(localStorage.getItem('rinsebell-clock'));"
                + " localStorage.setItem('rinsebell-clock', JSON.stringify({ ...told, date: told.date - 600000 })); }");
        server.down = true;
        page.reload();
        assertThat(page.locator("time.clock").first().textContent()).isEqualTo("14:32");
    }

    @Test
    void inPlaceOfWhatIsNotKeptStandsWhatIs() {
        keep("desk");
        keep("basins");
        server.down = true;
        page.navigate(server.url("pocket"));
        assertThat(page.locator("h1").textContent()).isEqualTo("This screen is not kept on this device");
        assertThat(page.locator(".screens a").allTextContents()).hasSize(2);
        page.locator(".screens a[href='/desk']").click();
        assertThat(link()).startsWith("as of 14:22");
    }

    @Test
    void whatIsPressedOnAKeptScreenWaitsForTheServer() {
        keep("basins");
        server.down = true;
        page.reload();
        page.locator("main form[data-press] button").first().click();
        page.locator("#kept .waiting").waitFor();
        assertThat(server.presses).isEmpty();
        server.down = false;
        page.locator("#kept .waiting")
                .waitFor(new com.microsoft.playwright.Locator.WaitForOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
        assertThat(server.presses).hasSize(1);
    }

    /** Of two kept screens one can't be asked for anew when something was erased: its copy is gone all the same. */
    @Test
    void whatWasErasedGoesFromTheDeviceWithTheNextPage() {
        keep("basins");
        keep("pocket");
        keep("desk");
        server.failing.add("/basins");
        server.erasings++;
        page.navigate(server.url("floor"));
        assertOnlyPocketIsKeptAnew();
    }

    /** A page that stays open hears it from the feed. */
    @Test
    void whatWasErasedGoesFromTheDeviceWithTheNextBeat() {
        server.feed = beat();
        keep("basins");
        keep("pocket");
        keep("desk");
        server.failing.add("/basins");
        server.failing.add("/clock");
        server.erasings++;
        server.feed = beat();
        page.evaluate("() => window.dispatchEvent(new Event('online'))");
        assertOnlyPocketIsKeptAnew();
    }

    private static String beat() {
        return "event: beat\nid: k3f9-1041\ndata: {\"now\":" + server.now()
                + ",\"speed\":1,\"clock\":\"agrees\",\"erased\":" + server.erasings + "}\n\n";
    }

    private void assertOnlyPocketIsKeptAnew() {
        page.waitForCondition(() -> "1".equals(page.evaluate(ERASINGS, "/pocket")));
        assertThat(page.evaluate(KEPT, "/basins")).isEqualTo(false);
        server.down = true;
        page.navigate(server.url("pocket"));
        assertThat(link()).startsWith("as of 14:22");
    }

    /** A server that is away tells nothing, and what is kept stays. */
    @Test
    void nothingGoesWhileNobodyIsHeard() {
        keep("basins");
        keep("desk");
        server.erasings++;
        server.down = true;
        page.reload();
        assertThat(link()).startsWith("as of 14:22");
        assertThat(page.evaluate(KEPT, "/basins")).isEqualTo(true);
    }

    /** What else answers at the server's address is neither shown nor kept, and takes nothing away. */
    @Test
    void aStrangerIsNobody() {
        keep("basins");
        keep("desk");
        server.isAnothers = true;
        page.reload();
        assertThat(link()).startsWith("as of 14:22");
        var before = server.strangers.get();
        page.evaluate("() => navigator.serviceWorker.controller.postMessage('keep')");
        page.waitForCondition(() -> server.strangers.get() > before);
        page.reload();
        assertThat(link()).startsWith("as of 14:22");
        page.navigate(server.url("pocket"));
        assertThat(page.locator("h1").textContent()).isEqualTo("This screen is not kept on this device");
        assertThat(page.locator(".screens a").allTextContents()).hasSize(2).doesNotContain("Sign in");
    }

    /** After an update the files of before are gone, and what is kept asks for the new ones. */
    @Test
    void newFilesTakeThePlaceOfTheOld() {
        keep("basins");
        keep("desk");
        var before = server.asset("main.js");
        server.update();
        page.reload();
        page.waitForCondition(
                () -> !(boolean) page.evaluate("async (old) => Boolean(await caches.match(old))", before));
        server.down = true;
        page.navigate(server.url("basins"));
        assertThat(link()).startsWith("as of");
        assertThat(page.evaluate("() => new URL(document.querySelector('script[type=module]').src).pathname"))
                .isEqualTo(server.asset("main.js"))
                .isNotEqualTo(before);
    }

    /** Over plain HTTP on a LAN there is no service worker: nothing breaks, and the open page goes on. */
    @Test
    void whereNothingMayBeKeptAnOpenPageStaysUsable() {
        tablet.addInitScript("Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined })");
        page.onPageError(error -> {
            throw new AssertionError(error);
        });
        page.navigate(server.url("basins"));
        server.down = true;
        page.locator("main form[data-press] button").first().click();
        page.locator("#kept .waiting").waitFor();
        server.down = false;
        page.waitForCondition(() -> server.presses.size() == 1);
        server.down = true;
        try {
            page.reload();
        } catch (PlaywrightException refused) {
            assertThat(refused.getMessage()).contains("ERR_EMPTY_RESPONSE");
        }
    }
}
