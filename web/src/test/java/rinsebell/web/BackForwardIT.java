package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A page that the browser kept as it stood while another was shown, and shows again: Chromium's own back/forward cache.
 * From the house itself Chromium keeps no page in that way, because nothing of it may be stored; other browsers may.
 */
class BackForwardIT {
    private static final long MOST_APART = 100;
    private static final String MODULE = "const of = (name) => import(document.querySelector('script[type=module]').src"
            + ".replace('main.js', name)); ";

    @Test
    void whatComesBackIsBroughtUpToDate() throws IOException {
        try (var server = new SampleServer();
                var chromium = Chromium.start(List.of("--disable-back-forward-cache"));
                var page = chromium.browser.newPage()) {
            page.addInitScript("addEventListener('pageshow', ({ persisted }) => (window.persisted = persisted))");
            server.feed = ": nothing yet\n\n";
            page.navigate(server.url("floor"));
            page.waitForCondition(() -> server.feeds.get() > 0);
            page.navigate(server.url("chair"));
            server.feed = "event: beat\nid: k3f9-1042\ndata: {\"now\":" + server.now()
                    + ",\"speed\":1,\"clock\":\"set\"}\n\nevent: fragment\nid: k3f9-1042\ndata: {\"id\":\"row-1\","
                    + "\"n\":1042,\"html\":\"<li id=\\\"row-1\\\" data-n=\\\"k3f9-1042\\\">came meanwhile</li>\"}\n\n";
            server.pass(Duration.ofMinutes(10));
            var before = server.feeds.get();
            page.evaluate("() => history.back()");
            // By itself the page finds only after 12 s that it hears nothing.
            page.setDefaultTimeout(4_000);
            page.waitForFunction("() => window.persisted === true");
            page.waitForCondition(() -> server.feeds.get() > before);
            page.waitForFunction("() => document.getElementById('row-1').textContent === 'came meanwhile'");
            page.waitForCondition(() -> Math.abs(shown(page) - server.now()) < MOST_APART);
            assertThat((boolean) page.evaluate("async () => { " + MODULE + "return (await of('sync.js')).isKnown(); }"))
                    .isTrue();
        }
    }

    private static double shown(Page page) {
        return ((Number) page.evaluate("async () => { " + MODULE + "return (await of('clock.js')).now(); }"))
                .doubleValue();
    }
}
