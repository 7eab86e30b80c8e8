package rinsebell.demo.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.time.MachineTime;

/**
 * One client's day in a real browser, from the door to the door: pressed at a tablet and a phone, and seen at the wall,
 * which is told by the feed alone. Each part goes on where the one before it ended.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class WholeDayIT {
    private static final String CLIENT = "Q. D.";
    private static final Pattern URGENT = Pattern.compile("\\b(medium|high)\\b");
    private static final Pattern HIGH = Pattern.compile("\\bhigh\\b");
    private static final double PATIENCE_MILLIS = 10_000;
    /** Two beats may be lost before a screen says so. */
    private static final double LOST_MILLIS = 30_000;

    @SuppressWarnings("NullAway.Init")
    private RunningDemo demo;

    @SuppressWarnings("NullAway.Init")
    private Browsing browsing;

    @SuppressWarnings("NullAway.Init")
    private Page wall;

    @SuppressWarnings("NullAway.Init")
    private Page tablet;

    @SuppressWarnings("NullAway.Init")
    private Page phone;

    private String head = "";

    @BeforeAll
    void opens(@TempDir Path folder) throws Exception {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MILLIS);
        demo = RunningDemo.under(Map.of("TZ", afternoon()), folder.resolve("data"));
        browsing = new Browsing();
        wall = browsing.screen(Size.WALL);
        tablet = browsing.screen(Size.TABLET);
        phone = browsing.screen(Size.PHONE);
        wall.navigate(demo.url() + "/");
    }

    /** Where it is early afternoon now: what was 40 minutes ago must not be of the salon's day before. */
    private static String afternoon() {
        var ahead = 13 - new MachineTime().wall().atOffset(ZoneOffset.UTC).getHour();
        // The sign of these names is that of the way back to UTC (tz database, file etcetera).
        return "Etc/GMT" + (ahead > 0 ? "-" : "+") + Math.abs(ahead);
    }

    @AfterAll
    void closes() {
        browsing.close();
        demo.close();
    }

    /** Whatever happens, it hangs where clients see it. */
    @AfterEach
    void theWallAlarmsNobodyAndNothingWentWrong() {
        assertThat(wall.locator("body").innerText().toLowerCase(Locale.ROOT))
                .doesNotContain("burning", "tingling", "swelling", "reaction")
                .doesNotContainPattern("\\blate\\b");
        assertThat(browsing.faults()).isEmpty();
    }

    @Test
    @Order(1)
    void aClientIsWelcomedAndAsked() {
        phone.navigate(demo.url() + "/pocket");
        phone.locator(".people a", new Page.LocatorOptions().setHasText("Piet")).click();
        tablet.navigate(demo.url() + "/welcome?place=chair-8");
        tablet.locator("input[name=label]").fill(CLIENT);
        tablet.locator("select[name=stylist]").selectOption("Piet");
        ago(tablet, 40);
        submit(tablet);
        assertThat(tablet.locator(".head-name h1")).containsText(CLIENT);
        head = tablet.url().replaceAll("^.*?(/visits/\\d+).*$", "$1");

        assertThat(wall.locator("#row-8 .who")).containsText(CLIENT);
        assertThat(phone.locator(card())).containsText(CLIENT);

        tablet.locator(".presses a.main[href$='/gate']").click();
        tile(tablet, "skinTest", "no reaction");
        tablet.locator("input[name=skinTestOn]").fill(threeDaysAgo());
        tile(tablet, "scalp", "fine");
        tile(tablet, "earlierReaction", "No");
        tile(tablet, "metal", "none");
        tile(tablet, "under16", "No");
        ago(tablet, 39);
        submit(tablet);
        assertThat(said(tablet)).containsText("Questions answered");
    }

    @Test
    @Order(2)
    void aBowlIsMixedAndPutOn() {
        tablet.locator(".presses a.main[href^='/mixtures']").click();
        tablet.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Brimmow mild cream"))
                .click();
        tile(tablet, "developer", "Brimmow developer 20 vol");
        tablet.getByLabel("Grams", exactly()).fill("120");
        assertThat(tablet.locator(".preview .weigh")).containsText("60 g");
        ago(tablet, 30);
        submit(tablet);
        assertThat(said(tablet)).containsText("Bowl mixed");
        assertThat(wall.locator("#row-8 rect.mixed")).hasCount(1);

        phone.locator(card() + " .presses a").click();
        tile(phone, "area", "whole head");
        tile(phone, "zone", "on scalp");
        ago(phone, 28);
        submit(phone);
        assertThat(said(phone)).containsText("First on");
        assertThat(wall.locator("#row-8 rect.gone")).hasCount(1);
        Browsing.keep(phone, "day-on-phone");
    }

    @Test
    @Order(3)
    void whatIsLookedAtStopsRinging() {
        tablet.navigate(demo.url() + head);
        tablet.locator(".presses form[action$='/last-on'] button").click();
        assertThat(said(tablet)).containsText("Last on");
        assertThat(wall.locator("#row-8")).hasClass(URGENT);

        tablet.locator(".presses a[href$='/strand']").click();
        tile(tablet, "level", "6");
        tile(tablet, "tone", "orange");
        tile(tablet, "decision", "look again in 10 min");
        submit(tablet);
        assertThat(said(tablet)).containsText("Strand looked at");
        phone.navigate(demo.url() + head + "/scalp");
        tile(phone, "finding", "fine");
        submit(phone);
        assertThat(said(phone)).containsText("Scalp looked at");
        assertThat(wall.locator("#row-8")).not().hasClass(URGENT);
        assertThat(wall.locator("#row-8 .what")).containsText("check");
    }

    @Test
    @Order(4)
    void undoTakesItBackOnEveryScreen() {
        tablet.navigate(demo.url() + head + "/strand");
        tile(tablet, "decision", "rinse");
        submit(tablet);
        assertThat(said(tablet)).containsText("Strand looked at");
        assertThat(wall.locator("#row-8 .what")).containsText("rinse");
        press(tablet, "#answer", "Undo");
        assertThat(said(tablet)).containsText("Undone");
        assertThat(wall.locator("#row-8 .what strong")).not().containsText("rinse");
    }

    @Test
    @Order(5)
    void heatIsOnAndOffAndWhatIsForbiddenIsAskedAbout() {
        tablet.navigate(demo.url() + head + "/heat-on");
        tile(tablet, "heat", "gentle steam");
        submit(tablet);
        assertThat(said(tablet)).containsText("Heat on");
        assertThat(wall.locator("#row-8 svg.heat")).hasCount(1);
        tablet.locator(".presses form[action$='/heat-off'] button").click();
        assertThat(said(tablet)).containsText("Heat off");
        press(tablet, "#answer", "Change the time");
        submit(tablet);
        assertThat(said(tablet)).containsText("Time changed");

        tablet.navigate(demo.url() + head + "/heat-on");
        tile(tablet, "heat", "dryer");
        submit(tablet);
        assertThat(tablet.locator("#answer .reasons")).containsText("no dryer");
        Browsing.keep(tablet, "day-refused-tablet");
        press(tablet, "#answer", "Already done");
        assertThat(tablet.locator(".rule.broken")).hasCount(1);
        assertThat(wall.locator("#row-8")).hasClass(HIGH);
        assertThat(wall.locator("#row-8 .what")).containsText("please come");
        tablet.locator(".presses form[action$='/heat-off'] button").click();
        assertThat(tablet.locator(".rule.broken")).hasCount(0);
        assertThat(wall.locator("#row-8 .what")).not().containsText("please come");
    }

    @Test
    @Order(6)
    void tinglingCallsForALookAndALookEndsIt() {
        phone.navigate(demo.url() + "/pocket");
        press(phone, card(), "Tingling");
        assertThat(phone.locator(".head-name")).containsText(CLIENT);
        assertThat(wall.locator("#row-8 .what")).containsText("please come");
        phone.locator(".presses a.main[href$='/scalp']").click();
        tile(phone, "finding", "pink");
        submit(phone);
        assertThat(said(phone)).containsText("Scalp looked at");
        assertThat(wall.locator("#row-8 .what")).not().containsText("please come");
    }

    @Test
    @Order(7)
    void waterIsOnInOnePressAtTheBasin() {
        tablet.navigate(demo.url() + "/basins");
        assertThat(tablet.locator(card() + " .dont")).containsText("scalp is pink");
        tablet.locator(card() + " form[action$='/rinse'] button").click();
        assertThat(said(tablet)).containsText("Rinsed");
        assertThat(tablet).hasURL(demo.url() + "/basins");
        assertThat(wall.locator("#row-8 .who")).containsText("at basin");
        assertThat(wall.locator("#row-8 svg.rinsed")).hasCount(1);
        assertThat(tablet.locator(card())).hasCount(0);
        Browsing.keep(wall, "day-at-basin-wall");
    }

    @Test
    @Order(8)
    void anotherRoundKeepsOffTheScalp() {
        tablet.navigate(demo.url() + head);
        tablet.locator(".presses form[action$='/towel-dried'] button").click();
        assertThat(said(tablet)).containsText("Towel-dried");
        tablet.locator(".presses a.main[href$='/scalp']").click();
        tile(tablet, "finding", "fine");
        submit(tablet);
        assertThat(said(tablet)).containsText("Scalp looked at");
        tablet.locator(".presses a.main[href$='/lift']").click();
        tile(tablet, "reached", "No");
        submit(tablet);
        assertThat(said(tablet)).containsText("Lift judged");
        tablet.navigate(demo.url() + head + "/move");
        tile(tablet, "place", "chair 8");
        submit(tablet);
        assertThat(said(tablet)).containsText("Moved");
        tablet.locator(".presses a[href^='/mixtures']").click();
        tablet.locator("main a[href^='/bowls/mix']").click();
        tablet.getByLabel("Brimmow mild cream, g", exactly()).fill("40");
        tablet.getByLabel("Brimmow developer 20 vol, g", exactly()).fill("40");
        tile(tablet, "reason", "another round, after rinsing");
        submit(tablet);
        assertThat(said(tablet)).containsText("Bowl mixed");
        tablet.locator(".presses a[href$='/put-on']").click();
        tile(tablet, "area", "whole head");
        tile(tablet, "zone", "on scalp");
        submit(tablet);
        assertThat(tablet.locator("#answer .reasons")).containsText("another lightening round stays off the scalp");
        press(tablet, "#answer", "Not done");
        assertThat(tablet.locator(".head-name .state")).containsText("not on yet");
        assertThat(wall.locator("#row-8 rect.gone")).hasCount(0);

        tablet.navigate(demo.url() + head + "/put-on");
        tile(tablet, "area", "lengths");
        tile(tablet, "zone", "off scalp");
        submit(tablet);
        assertThat(said(tablet)).containsText("First on");
        assertThat(tablet.locator(".rules")).containsText("Keep it off the scalp");
        assertThat(wall.locator("#row-8 rect.gone")).hasCount(1);
    }

    @Test
    @Order(9)
    void burningSaysWhatToDoFirst() {
        phone.navigate(demo.url() + head);
        press(phone, ".discomfort", "Burning");
        assertThat(phone.locator(".aid")).containsText("call emergency services");
        assertThat(phone.locator(".presses form[action$='/rinse'] button")).isInViewport();
        assertThat(wall.locator("#row-8 .what")).containsText("please come now");
        Browsing.keep(phone, "day-burning-phone");
        Browsing.keep(wall, "day-burning-wall");
        phone.locator(".presses form[action$='/rinse'] button").click();
        assertThat(said(phone)).containsText("Rinsed");
        phone.navigate(demo.url() + head + "/scalp");
        tile(phone, "finding", "pink");
        submit(phone);
        assertThat(said(phone)).containsText("Scalp looked at");
        assertThat(phone.locator(".aid")).hasCount(0);
        assertThat(wall.locator("#row-8")).not().hasClass(URGENT);
    }

    @Test
    @Order(10)
    void withoutScriptTheSamePressesCount() {
        var plain = browsing.screen(Size.TABLET, false);
        plain.navigate(demo.url() + head + "/label");
        plain.locator("input[name=label]").fill("Q. E.");
        submit(plain);
        assertThat(said(plain)).containsText("Label changed");
        assertThat(wall.locator("#row-8 .who")).containsText("Q. E.");
        press(plain, "#answer", "Undo");
        assertThat(said(plain)).containsText("Undone");
        assertThat(wall.locator("#row-8 .who")).containsText(CLIENT);
    }

    /** A foot pedal, a scanner and a keyboard are one thing to a browser. */
    @Test
    @Order(11)
    void aLookIsRecordedByTheKeyboardAlone() {
        tablet.navigate(demo.url() + wall.locator("#row-6 a.open").getAttribute("href"));
        tabTo(".presses a[href$='/scalp']");
        tablet.keyboard().press("Enter");
        assertThat(tablet.locator("input[name=finding]")).hasCount(3);
        tabTo("input[name=finding]");
        tablet.keyboard().press("Space");
        tabTo("input[name=minutesAgo]");
        tablet.keyboard().type("1");
        tablet.keyboard().press("Enter");
        assertThat(said(tablet)).containsText("Scalp looked at");
        tabTo("#answer button");
        tablet.keyboard().press("Space");
        assertThat(said(tablet)).containsText("Undone");
    }

    private void tabTo(String where) {
        var all = ((Number)
                        tablet.evaluate("() => document.querySelectorAll('a, button, input, select, textarea').length"))
                .intValue();
        for (var step = 0; step < all; step++) {
            tablet.keyboard().press("Tab");
            if (Boolean.TRUE.equals(tablet.evaluate("where => document.activeElement.matches(where)", where))) {
                return;
            }
        }
        throw new AssertionError("the keyboard does not come to " + where + " on " + tablet.url());
    }

    /** What is pressed while no server runs is kept, is sent under the same id, and counts once. */
    @Test
    @Order(12)
    void thePressIsKeptWhileNoServerRuns() throws Exception {
        tablet.navigate(demo.url() + wall.locator("#row-5 a.open").getAttribute("href"));
        assertThat(tablet.locator("#link")).hasText("connected");
        var sent = new ArrayList<String>();
        tablet.onRequest(request -> {
            if (request.url().endsWith("/discomfort")) {
                sent.add(request.postData());
            }
        });
        var before = complaints(tablet);
        demo.kill();
        press(tablet, ".discomfort", "Tingling");
        assertThat(tablet.locator("#kept .waiting")).containsText("One press waits", lost());
        for (var screen : List.of(wall, tablet)) {
            assertThat(screen.locator("#link")).containsText("not connected since", lost());
            assertThat(screen.locator("html[data-alone]")).hasCount(1);
        }
        Browsing.keep(wall, "day-alone-wall");
        Browsing.keep(tablet, "day-alone-tablet");
        demo.startAgain();
        assertThat(tablet.locator("#answer button")).hasText("Undo", inTime());
        assertThat(said(tablet)).containsText("Tingling");
        assertThat(wall.locator("#row-5 .what")).containsText("please come", lost());
        assertThat(wall.locator("#link")).hasText("connected");
        assertThat(sent.stream().map(body -> body.replaceAll("^.*press=([0-9a-f]+).*$", "$1")))
                .hasSizeGreaterThan(1)
                .containsOnly(sent.get(0).replaceAll("^.*press=([0-9a-f]+).*$", "$1"));
        assertThat(complaints(tablet)).isEqualTo(before + 1);
    }

    /** How often the log of the head in chair 5 tells of discomfort. */
    private int complaints(Page like) {
        var page = like.context().newPage();
        page.navigate(demo.url() + wall.locator("#row-5 a.open").getAttribute("href") + "/more");
        var told = page.locator(".line", new Page.LocatorOptions().setHasText("discomfort"))
                .count();
        page.close();
        return told;
    }

    @Test
    @Order(13)
    void theClientLeavesAndTheChairIsFree() {
        tablet.navigate(demo.url() + head + "/leave");
        submit(tablet);
        assertThat(said(tablet)).containsText("Left");
        assertThat(wall.locator("#row-8 .what")).hasText("free");
        assertThat(phone.locator(card())).hasCount(0);
    }

    private String card() {
        return "#card-" + head.replaceAll("\\D", "");
    }

    private static Locator said(Page page) {
        return page.locator("#answer .said");
    }

    private static void ago(Page page, int minutes) {
        page.locator("input[name=minutesAgo]").fill(String.valueOf(minutes));
    }

    private static void submit(Page page) {
        page.locator(".submit button").click();
    }

    private static void tile(Page page, String field, String words) {
        page.locator("[id='" + field + "'] label.tile", new Page.LocatorOptions().setHasText(exact(words)))
                .click();
    }

    private static void press(Page page, String where, String words) {
        page.locator(where + " button, " + where + " a", new Page.LocatorOptions().setHasText(words))
                .first()
                .click();
    }

    /** Read by the browser, which knows no quoting; no words of a tile need it. */
    private static Pattern exact(String words) {
        return Pattern.compile("^\\s*" + words + "\\s*$");
    }

    private static Page.GetByLabelOptions exactly() {
        return new Page.GetByLabelOptions().setExact(true);
    }

    private static LocatorAssertions.HasTextOptions inTime() {
        return new LocatorAssertions.HasTextOptions().setTimeout(LOST_MILLIS);
    }

    private static LocatorAssertions.ContainsTextOptions lost() {
        return new LocatorAssertions.ContainsTextOptions().setTimeout(LOST_MILLIS);
    }

    /** By the clock of the page, which is the salon's. */
    private String threeDaysAgo() {
        var now = Instant.ofEpochMilli(Long.parseLong(tablet.locator("html").getAttribute("data-now")));
        return LocalDate.ofInstant(now, ZoneOffset.UTC).minusDays(3).toString();
    }
}
