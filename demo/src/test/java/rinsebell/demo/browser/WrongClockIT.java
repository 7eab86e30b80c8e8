package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.demo.DemoHere;

/** A tablet whose own clock is half a day wrong, and is set while it hangs there, beside the server's clock. */
class WrongClockIT {
    /** How far it may be from the server, in milliseconds, besides half a round trip. */
    private static final double MOST_APART = 100;

    private static final Pattern NOW = Pattern.compile("\"now\":(\\d+)");

    private static final String HAND = """
            (() => {
              const True = Date;
              let wrong = -12 * 3600000;
              window.turn = (millis) => (wrong += millis);
              window.Date = class extends True {
                constructor(...given) {
                  given.length ? super(...given) : super(True.now() + wrong);
                }
                static now() {
                  return True.now() + wrong;
                }
              };
            })()""";

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void showsTheServersTime(@TempDir Path folder) throws Exception {
        try (var demo = DemoHere.in(folder.resolve("data"));
                var browsing = new Browsing()) {
            var tablet = browsing.screen(Size.TABLET);
            tablet.addInitScript(HAND);
            tablet.navigate(demo.url() + "/");
            assertShowsTheServersTime(tablet, demo);
            for (var hours : new int[] {2, -4}) {
                tablet.waitForRequest("**/clock", () -> turn(tablet, Duration.ofHours(hours)));
                assertShowsTheServersTime(tablet, demo);
            }
            assertThat(browsing.faults()).isEmpty();
        }
    }

    private static void turn(Page tablet, Duration by) {
        tablet.evaluate("millis => window.turn(millis)", (double) by.toMillis());
    }

    private void assertShowsTheServersTime(Page tablet, DemoHere demo) throws Exception {
        var before = now(demo);
        var shown = (Number) tablet.evaluate("async () => (await import(document.querySelector('script[type=module]')"
                + ".src.replace('main.js', 'clock.js'))).now()");
        var apart = MOST_APART + lastTrip(tablet) / 2;
        assertThat(shown.doubleValue()).isBetween(before - apart, now(demo) + apart);
    }

    /** How long the last question about the time and its answer took, as the browser itself has measured: it never counts a worse one. */
    private static double lastTrip(Page tablet) {
        return ((Number) tablet.evaluate("() => (performance.getEntriesByType('resource')"
                        + ".filter(one => new URL(one.name).pathname === '/clock').at(-1)"
                        + " ?? performance.getEntriesByType('navigation')[0]).duration"))
                .doubleValue();
    }

    private long now(DemoHere demo) throws IOException, InterruptedException {
        var asked = HttpRequest.newBuilder(URI.create(demo.url() + "/clock")).build();
        var told = NOW.matcher(
                client.send(asked, HttpResponse.BodyHandlers.ofString()).body());
        assertThat(told.find()).isTrue();
        return Long.parseLong(told.group(1));
    }
}
