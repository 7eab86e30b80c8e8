package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One browser with many pages of the house open. */
class ManyTabsIT {
    /** Longer than the 12 s for which a page that hears nothing still says that it is connected. */
    private static final String BEATS_CAME = "() => performance.now() > 14000";

    /** What a browser lets only secure pages do (W3C Secure Contexts), and only where it believes who serves them. */
    private static final String AWAKE = "() => navigator.wakeLock.request('screen').then(lock => lock.type)";

    private static final String KEPT = "() => navigator.serviceWorker.ready.then(worker => worker.active !== null)";

    @SuppressWarnings("NullAway.Init")
    private static RunningDemo demo;

    @BeforeAll
    static void starts(@TempDir Path folder) throws Exception {
        demo = RunningDemo.in(folder.resolve("data"), "--open-to-network", "--host", "127.0.0.1");
    }

    @AfterAll
    static void stops() {
        demo.close();
    }

    @Test
    void whereTheAuthorityIsTrustedEightTabsAreLiveAndANinthIsAnswered(@TempDir Path folder) throws Exception {
        try (var browsing = new Browsing(TrustingHome.in(folder, demo.url() + "/trust"))) {
            var browser = browsing.device(Size.TABLET);
            var tabs = tabs(browser, demo.secureUrl(), 8);
            // Later tabs are handed over by the worker that the first one brought.
            assertThat(tabs.get(0).evaluate("() => performance.getEntriesByType('navigation')[0].nextHopProtocol"))
                    .isEqualTo("h2");
            var last = tabs.get(7);
            assertThat(last.evaluate(AWAKE)).isEqualTo("screen");
            assertThat(last.evaluate(KEPT)).isEqualTo(true);
            last.waitForFunction(BEATS_CAME);
            assertThat(tabs).allMatch(tab -> link(tab).equals("connected"));
            var ninth = browser.newPage();
            ninth.navigate(demo.secureUrl() + "/");
            ninth.locator("main a[href^='/visits/']").first().click();
            ninth.locator("main form[action$='/discomfort'] button").first().click();
            ninth.locator("#answer .said").waitFor();
            assertThat(tabs).allMatch(tab -> link(tab).equals("connected"));
        }
    }

    @Test
    void whereItIsNotTrustedNoPageOpens() {
        try (var browsing = new Browsing()) {
            var page = browsing.device(Size.PHONE).newPage();
            assertThatThrownBy(() -> page.navigate(demo.secureUrl() + "/"))
                    .hasMessageContaining("ERR_CERT_AUTHORITY_INVALID");
        }
    }

    /** A browser has six connections for all its pages then, and a press must find one free. */
    @Test
    void overHttp1TheFifthTabAsksAndRingsAllTheSame() {
        try (var browsing = new Browsing()) {
            var tabs = tabs(browsing.device(Size.TABLET), demo.url(), 5);
            var fifth = tabs.get(4);
            fifth.waitForFunction(BEATS_CAME);
            assertThat(link(fifth)).isEqualTo("connected, asks every few seconds: many pages are open in this browser");
            assertThat(tabs.subList(0, 4)).allMatch(tab -> link(tab).equals("connected"));
            fifth.evaluate("async () => { const of = (name) => import(document.querySelector('script[type=module]').src"
                    + ".replace('main.js', name)); (await of('device.js')).choose({ ear: 'all' }); }");
            fifth.waitForFunction("() => ['low', 'medium', 'high'].includes(document.documentElement.dataset.ring)");
        }
    }

    private static List<Page> tabs(BrowserContext browser, String url, int many) {
        return Stream.generate(browser::newPage)
                .limit(many)
                .peek(tab -> tab.navigate(url + "/"))
                .peek(tab -> tab.waitForFunction("() => document.getElementById('link').textContent"))
                .toList();
    }

    private static String link(Page tab) {
        return tab.locator("#link").textContent();
    }
}
