package rinsebell.demo.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.net.URI;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.demo.DemoHere;

/** A tablet that came in over plain HTTP says what that costs, and rings all the same. */
class PlainHttpIT {
    private static final String RINGS =
            "() => ['low', 'medium', 'high'].includes(document.documentElement.dataset.ring)";

    private static final String FOR_EVERYBODY = "async () => { const of = (name) => import(document"
            + ".querySelector('script[type=module]').src.replace('main.js', name));"
            + " (await of('device.js')).choose({ ear: 'all' }); }";

    @Test
    void itSaysWhatIsMissingAndStillRings(@TempDir Path folder) throws Exception {
        try (var demo = DemoHere.in(
                        folder.resolve("data"), "--open-to-network", "--host", "127.0.0.1", "--name", Browsing.NAME);
                var browsing = new Browsing()) {
            var own = browsing.screen(Size.TABLET);
            var tablet = browsing.screen(Size.TABLET);
            var address =
                    "http://" + Browsing.NAME + ":" + URI.create(demo.url()).getPort();
            DevicesIT.choosesAPin(own, demo.url());
            own.locator("main a[href='/devices']").first().click();
            own.locator("input[name=plain][value=yes]").check();
            own.locator("main form[action='/devices/plain'] button").click();
            tablet.navigate(address + "/join#" + DevicesIT.invitation(own, demo.url()));
            assertThat(tablet.locator("main")).containsText("Others on this network can read along");
            tablet.locator("main button").click();
            tablet.waitForURL(Pattern.compile(".*/visits/\\d+"));
            saysWhatIsMissing(tablet);
            tablet.navigate(address + "/");
            saysWhatIsMissing(tablet);
            tablet.evaluate(FOR_EVERYBODY);
            tablet.waitForFunction(RINGS);
            assertThat(tablet.locator("#link")).hasText("connected");
            tablet.navigate(address + "/policy");
            assertThat(tablet.locator("main")).not().containsText("Who is it?");
            assertThat(tablet.locator("main input")).hasCount(0);
        }
    }

    /** It is said of the browser, too: W3C Secure Contexts, section 3. */
    private static void saysWhatIsMissing(Page tablet) {
        assertThat(tablet.locator(".plainly")).isVisible();
        assertThat(tablet.locator(".plainly")).containsText("the screen may fall asleep");
        assertThat(tablet.evaluate("() => window.isSecureContext")).isEqualTo(false);
    }
}
