package rinsebell.demo.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A link is made on a tablet, looks in on a phone, and is taken back; the phone's time is the test's. */
class LookInIT {
    /** A page asks anew within 15 s. */
    private static final long A_WHILE_MILLIS = 16_000;

    private static final long SLEEP_MILLIS = 60_000;

    private static final String PRESSED = "/api/visits";

    @Test
    void aPhoneSeesWhenChairsAreFreeUntilItsLinkIsTakenBack(@TempDir Path folder) throws Exception {
        try (var demo = RunningDemo.in(folder.resolve("data"));
                var browsing = new Browsing()) {
            var tablet = browsing.screen(Size.TABLET);
            var link = makesALink(tablet, demo, browsing);
            var phone = browsing.screen(Size.PHONE);
            phone.clock().install();
            phone.navigate(link);
            showsTheChairsAndNobody(phone, browsing);
            followsTheFloor(phone, demo);
            assertThat(browsing.faults()).isEmpty();
            saysThatItHearsNothing(phone, demo);
            doesNotLookCurrentAfterASleep(phone);
            closesWhenTakenBack(tablet, phone, demo);
        }
    }

    private static String makesALink(Page tablet, RunningDemo demo, Browsing browsing) throws Exception {
        tablet.navigate(demo.url() + "/desk");
        tablet.locator("a[href='/look-ins']").click();
        assertThat(tablet.locator("main")).containsText("No link is out.");
        tablet.locator("#name").fill("Ada’s phone");
        tablet.locator("main form button").click();
        var link = tablet.locator(".made .address").first();
        assertThat(link).hasAttribute("href", Pattern.compile(".*/look/[A-Za-z0-9_-]{24}"));
        assertFits(tablet, browsing, "look-ins-made-tablet");
        var address = link.getAttribute("href");
        assertThat(BenchIT.read(tablet.locator(".made svg").screenshot()))
                .as("the code")
                .isEqualTo(address);
        assertThat(tablet.locator(".made .address").last().getAttribute("href")).isEqualTo(address + "/chairs.ics");
        return address;
    }

    /** The demo's day: chair 8 is free, all others are taken, and somebody waits. */
    private static void showsTheChairsAndNobody(Page phone, Browsing browsing) {
        assertThat(phone.locator(".chair-times li")).hasCount(8);
        assertThat(chair(phone, 8)).containsText("free now");
        assertThat(chair(phone, 1)).containsText("almost surely by");
        assertThat(phone.locator(".lost")).isHidden();
        assertThat(phone.locator("a, button, input, form")).hasCount(0);
        for (var size : List.of(Size.PHONE, Size.TABLET, Size.WALL)) {
            phone.setViewportSize(size.width(), size.height());
            assertFits(phone, browsing, "look-" + size);
        }
        phone.setViewportSize(Size.PHONE.width(), Size.PHONE.height());
    }

    private static Locator chair(Page phone, int number) {
        return phone.locator(".chair-times li").nth(number - 1);
    }

    private static void followsTheFloor(Page phone, RunningDemo demo) {
        var asking = new Asking(demo.url());
        var told = asking.press(PRESSED, "look-in-1", "{\"label\":\"Z. Q.\",\"place\":\"chair-8\"}");
        phone.clock().fastForward(A_WHILE_MILLIS);
        assertThat(chair(phone, 8)).containsText("taken, not known until when");
        var visit = told.replaceFirst("(?s).*\"facts\":\\[(\\d+).*", "$1");
        asking.press(PRESSED + "/" + visit + "/services", "look-in-2", "{\"services\":[\"cut\"]}");
        phone.clock().fastForward(A_WHILE_MILLIS);
        assertThat(chair(phone, 8)).containsText("almost surely by");
        assertThat(phone.content()).doesNotContain("Z. Q.");
        assertThat(asking.page(phone.url().substring(demo.url().length()) + "/chairs.ics"))
                .contains("SUMMARY:Chair 8 free\\, almost surely by ")
                .doesNotContain("Z. Q.");
    }

    private static void saysThatItHearsNothing(Page phone, RunningDemo demo) throws Exception {
        var asOf = phone.locator(".as-of").textContent().replaceFirst("\\D*", "");
        demo.kill();
        phone.clock().fastForward(A_WHILE_MILLIS);
        assertThat(phone.locator(".lost")).isVisible();
        assertThat(phone.locator(".lost").textContent()).startsWith("Not connected since " + asOf + ".");
        Browsing.keep(phone, "look-lost-phone");
        demo.startAgain();
        phone.clock().fastForward(A_WHILE_MILLIS);
        assertThat(phone.locator(".lost")).isHidden();
    }

    /** While a phone sleeps nothing runs, and its time of day goes on. */
    private static void doesNotLookCurrentAfterASleep(Page phone) {
        phone.clock().setSystemTime(((Number) phone.evaluate("Date.now() + " + SLEEP_MILLIS)).longValue());
        var isLost = phone.evaluate("() => { document.dispatchEvent(new Event('visibilitychange'));"
                + " return !document.querySelector('.lost').hidden; }");
        assertThat(isLost).as("says so before it has asked").isEqualTo(true);
        assertThat(phone.locator(".lost")).isHidden();
    }

    private static void closesWhenTakenBack(Page tablet, Page phone, RunningDemo demo) {
        tablet.navigate(demo.url() + "/look-ins");
        assertThat(tablet.locator(".line")).containsText("last opened");
        tablet.locator("form[action$='/take-back'] button").click();
        assertThat(tablet.locator("main")).containsText("No link is out.");
        phone.clock().fastForward(A_WHILE_MILLIS);
        assertThat(phone.locator("main")).containsText("This link is not open");
        assertThat(phone.locator(".chair-times")).hasCount(0);
        assertThat(phone.title()).isEqualTo("This link is not open");
        Browsing.keep(phone, "look-closed-phone");
        assertThat(phone.reload().status()).isEqualTo(404);
        assertThat(phone.locator("main")).containsText("This link is not open");
    }

    private static void assertFits(Page page, Browsing browsing, String picture) {
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        Browsing.keep(page, picture);
        assertThat(Browsing.overflow(page)).as("wider than its screen").isLessThanOrEqualTo(0);
        assertThat(browsing.violations(page)).isEmpty();
    }
}
