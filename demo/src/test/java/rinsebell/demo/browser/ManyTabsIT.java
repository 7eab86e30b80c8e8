package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One browser with many pages of the house open. */
class ManyTabsIT {
    /** Longer than the 12 s for which a page that hears nothing still says that it is connected. */
    private static final String BEATS_CAME = "() => performance.now() > 14000";

    @Test
    void overHttp2EightTabsAreLiveAndANinthIsAnswered(@TempDir Path folder) throws Exception {
        var own = OwnCertificate.in(folder);
        try (var demo = RunningDemo.in(
                        folder.resolve("data"),
                        "--certificate",
                        own.certificate().toString(),
                        "--key",
                        own.key().toString());
                var browsing = new Browsing()) {
            var browser = browsing.device(Size.TABLET);
            var tabs = tabs(browser, demo, 8);
            assertThat(tabs.get(7).evaluate("() => performance.getEntriesByType('navigation')[0].nextHopProtocol"))
                    .isEqualTo("h2");
            tabs.get(7).waitForFunction(BEATS_CAME);
            assertThat(tabs).allMatch(tab -> link(tab).equals("connected"));
            var ninth = browser.newPage();
            ninth.navigate(demo.url() + "/");
            ninth.locator("main a[href^='/visits/']").first().click();
            ninth.locator("main form[action$='/discomfort'] button").first().click();
            ninth.locator("#answer .said").waitFor();
            assertThat(tabs).allMatch(tab -> link(tab).equals("connected"));
        }
    }

    /** A browser has six connections for all its pages then, and a press must find one free. */
    @Test
    void overHttp1TheFifthTabAsksAndRingsAllTheSame(@TempDir Path folder) throws Exception {
        try (var demo = RunningDemo.in(folder.resolve("data"));
                var browsing = new Browsing()) {
            var tabs = tabs(browsing.device(Size.TABLET), demo, 5);
            var fifth = tabs.get(4);
            fifth.waitForFunction(BEATS_CAME);
            assertThat(link(fifth)).isEqualTo("connected, asks every few seconds: many pages are open in this browser");
            assertThat(tabs.subList(0, 4)).allMatch(tab -> link(tab).equals("connected"));
            fifth.evaluate("async () => { const of = (name) => import(document.querySelector('script[type=module]').src"
                    + ".replace('main.js', name)); (await of('device.js')).choose({ ear: 'all' }); }");
            fifth.waitForFunction("() => ['low', 'medium', 'high'].includes(document.documentElement.dataset.ring)");
        }
    }

    private static List<Page> tabs(BrowserContext browser, RunningDemo demo, int many) {
        return Stream.generate(browser::newPage)
                .limit(many)
                .peek(tab -> tab.navigate(demo.url() + "/"))
                .peek(tab -> tab.waitForFunction("() => document.getElementById('link').textContent"))
                .toList();
    }

    private static String link(Page tab) {
        return tab.locator("#link").textContent();
    }
}
