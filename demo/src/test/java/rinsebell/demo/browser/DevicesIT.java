package rinsebell.demo.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.net.URI;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.demo.DemoHere;

/** A tablet comes in by an invitation, over HTTPS with the salon's own authority, works, and is thrown out. */
class DevicesIT {
    private static final String PIN = "402917";
    private static final long IDLE_MILLIS = 121_000;

    @Test
    void aTabletComesInWorksAndIsThrownOut(@TempDir Path folder) throws Exception {
        try (var demo = DemoHere.in(
                        folder.resolve("data"), "--open-to-network", "--host", "127.0.0.1", "--name", Browsing.NAME);
                var browsing = new Browsing(TrustingHome.in(folder, demo.url() + "/trust"))) {
            var own = browsing.screen(Size.TABLET);
            var tablet = browsing.screen(Size.TABLET);
            tablet.clock().install();
            tablet.addInitScript("navigator.wakeLock.request = what => { document.title = 'awake: ' + what;"
                    + " return Promise.resolve(); }");
            var address = "https://" + Browsing.NAME + ":"
                    + URI.create(demo.secureUrl()).getPort();
            tablet.navigate(address + "/desk");
            assertThat(tablet.locator("h1")).hasText("Not in yet");
            assertThat(tablet.content()).doesNotContain("Harrowmere", "chair");

            choosesAPin(own, demo.url());
            tablet.navigate(address + "/join#" + invitation(own, demo.url()));
            assertThat(tablet.locator("main")).containsText("Tablet at chair 1");
            tablet.locator("main button").click();
            tablet.waitForURL(Pattern.compile(".*/visits/\\d+"));
            assertThat(tablet).hasTitle("awake: screen");

            isAskedWhoOnceButNotWhereItHurts(tablet);
            asksForAPinAndLocksAgain(tablet, address);
            showsNothingOnceItIsThrownOut(tablet, own, demo, address);
        }
    }

    static void choosesAPin(Page own, String url) {
        own.navigate(url + "/pins");
        own.locator("main a.press", new Page.LocatorOptions().setHasText("Choose a PIN: Orla"))
                .click();
        own.locator("#fresh").fill(PIN);
        own.locator("#again").fill(PIN);
        own.locator("#again").press("Enter");
        assertThat(own.locator("h1")).hasText("Who is it?");
        own.locator("#pin").fill(PIN);
        own.locator("#pin").press("Enter");
        assertThat(own.locator("main")).containsText("manager · has a PIN");
    }

    static String invitation(Page own, String url) throws Exception {
        own.navigate(url + "/devices");
        own.locator("#name").fill("Tablet at chair 1");
        own.locator("#purpose").selectOption("chair-1");
        own.locator("main button", new Page.LocatorOptions().setHasText("Show the code"))
                .click();
        var code = own.locator(".made .typed").textContent();
        assertThat(BenchIT.read(own.locator(".made svg").screenshot()))
                .startsWith("https://")
                .endsWith("/join#" + code);
        return code;
    }

    private static void isAskedWhoOnceButNotWhereItHurts(Page tablet) {
        var answer = tablet.locator("#answer");
        tablet.locator("main form[action$='/discomfort'] button").first().click();
        assertThat(answer).not().containsText("Who presses?");
        assertThat(answer.locator(".said")).isVisible();
        tablet.locator("main form[action$='/foils-out'] button").first().click();
        assertThat(answer).containsText("Who presses?");
        answer.locator("button", new Locator.LocatorOptions().setHasText("Tamsin"))
                .click();
        assertThat(answer).not().containsText("Who presses?");
        assertThat(tablet.context().cookies())
                .as("remembered, until nothing was pressed for a while")
                .anySatisfy(cookie -> assertThat(cookie.name).isEqualTo("__Host-who"));
    }

    private static void asksForAPinAndLocksAgain(Page tablet, String address) {
        tablet.navigate(address + "/policy");
        assertThat(tablet.locator("h1")).hasText("Who is it?");
        unlock(tablet);
        var field = tablet.locator("main form input[type=text]").first();
        assertThat(field).isVisible();
        field.fill("12345");
        tablet.clock().fastForward(IDLE_MILLIS);
        assertThat(field).isHidden();
        assertThat(tablet.locator(".veil h1")).hasText("Who is it?");
        unlock(tablet);
        assertThat(field).isVisible();
        assertThat(field).hasValue("12345");
    }

    private static void unlock(Page tablet) {
        tablet.locator("#pin").fill(PIN);
        tablet.locator("#pin").press("Enter");
    }

    private static void showsNothingOnceItIsThrownOut(Page tablet, Page own, DemoHere demo, String address) {
        tablet.navigate(address + "/");
        assertThat(tablet.locator("#link")).hasText("connected");
        own.navigate(demo.url() + "/devices");
        if (own.locator("#pin").count() > 0) {
            unlock(own);
        }
        own.locator("main form[action$='/throw-out'] button").click();
        assertThat(own.locator("main")).containsText("No other device is in.");
        // A stream that was cut off is opened again within 3 s.
        tablet.clock().runFor(5_000);
        assertThat(tablet.locator("h1")).hasText("Not in yet");
    }
}
