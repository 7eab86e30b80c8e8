package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The salon's time on a screen whose own clock is wrong, in a real browser. */
class ClockIT extends SamplePages {
    /** How far a screen may be from the server, in milliseconds, besides half a round trip. */
    private static final long MOST_APART = 100;

    /** In that time half of it, a second, is made good: {@code SLEW} of offset.js. */
    private static final double SOON = 2_000;

    /** A clock that somebody has set wrongly, and can set again: {@code Date} alone follows it. */
    private static final String HAND = """
            (() => {
              const True = Date;
              let wrong = 12 * 3600000;
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

    private BrowserContext device;
    private Page page;

    @BeforeEach
    void open() {
        device = chromium.device();
        page = device.newPage();
        page.setDefaultTimeout(10_000);
        page.addInitScript(HAND);
        page.navigate(server.url("chair"));
    }

    @AfterEach
    void close() {
        Chromium.close(device);
    }

    private Object in(String module, String code) {
        return in(page, module, code);
    }

    private double number(String module, String code) {
        return ((Number) in(module, code)).doubleValue();
    }

    /**
     * The screen's time lies between two readings of the server's, but for what it may be wrong; soon, for what a slow page
     * load had it wrong by is made good little by little.
     */
    private void assertShowsTheServersTime() {
        page.waitForCondition(this::showsTheServersTime, new Page.WaitForConditionOptions().setTimeout(SOON));
    }

    private boolean showsTheServersTime() {
        var before = server.now();
        var shown = number("clock.js", "return module.now();");
        return shown >= before - MOST_APART && shown <= server.now() + MOST_APART;
    }

    private void anHourIsSeen() {
        in("clock.js", "window.salonNow = module.now;");
        page.waitForFunction("() => window.salonNow() > " + (server.now() - MOST_APART));
    }

    private void measure() {
        assertThat(in("sync.js", "return module.measure();")).isEqualTo(true);
    }

    /**
     * RFC 5905, section 8: theta = ((T2 - T1) + (T3 - T4)) / 2, delta = (T4 - T1) - (T3 - T2). It gives no figures;
     * these are reckoned by hand.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 100, 110, 30, 90, 20, ahead by 90 and ten each way",
        "1000, 500, 500, 1040, -520, 40, behind, and answered in no time",
        "0, 43200010, 43200010, 20, 43200000, 20, twelve hours ahead",
        "0, 130, 130, 40, 110, 40, thirty there and ten back: wrong by ten, which is half the difference",
        "5, 5, 5, 5, 0, 0, the same clock"
    })
    void theOffsetIsReckonedAsInNtp(long t1, long t2, long t3, long t4, double offset, double delay, String why) {
        var trip = "module.roundTrip(" + t1 + ", " + t2 + ", " + t3 + ", " + t4 + ")";
        assertThat(number("offset.js", "return " + trip + ".offset;")).as(why).isEqualTo(offset);
        assertThat(number("offset.js", "return " + trip + ".delay;")).as(why).isEqualTo(delay);
    }

    /** RFC 5905, section 7.1: PHI is 15 parts in a million, so a sample is worth 0.9 ms less after a minute. */
    @Test
    void theShortestWayCountsUntilItIsTooOld() {
        assertThat(number("offset.js", "return module.bound({ offset: 0, delay: 10, at: 0 }, 0);"))
                .isEqualTo(6.0);
        assertThat(number("offset.js", "return module.bound({ offset: 0, delay: 10, at: 0 }, 60000);"))
                .isEqualTo(6.9);
        var trips =
                "[{ offset: 1, delay: 30, at: 0 }, { offset: 2, delay: 8, at: 1000 }, { offset: 3, delay: 9, at: 2000 }]";
        assertThat(number("offset.js", "return module.surest(" + trips + ", 2000).offset;"))
                .isEqualTo(2.0);
        var old = "[{ offset: 2, delay: 8, at: 0 }, { offset: 3, delay: 9, at: 60000 }]";
        assertThat(number("offset.js", "return module.surest(" + old + ", 60000).offset;"))
                .isEqualTo(3.0);
    }

    @Test
    void eightAreRememberedAndAContradictionForgetsThem() {
        var agreeing = "let trips = []; for (let i = 0; i < 20; i++)"
                + " trips = module.remembered(trips, { offset: i % 2, delay: 10, at: i });";
        assertThat(in("offset.js", agreeing + " return trips.map((trip) => trip.at);"))
                .isEqualTo(List.of(12, 13, 14, 15, 16, 17, 18, 19));
        var far = " trips = module.remembered(trips, { offset: 7200000, delay: 90, at: 20 }); return trips.length;";
        assertThat(in("offset.js", agreeing + far)).isEqualTo(1);
    }

    @Test
    void noiseIsMadeGoodWithoutAJump() {
        assertThat(in("offset.js", "return [0, 100, 200, 300].map((passed) => module.slewed(-100, passed));"))
                .isEqualTo(List.of(-100, -50, -0.0, -0.0));
        assertThat(in("offset.js", "return [2000, -2000, 2001, NaN].map(module.isSlewed);"))
                .isEqualTo(List.of(true, true, false, false));
    }

    /** A slow answer was wrong by 0.9 s, within what it may be; the quick one after it takes that back bit by bit. */
    @Test
    void noNoiseMovesAClockBack() {
        var shown = in(
                "clock.js",
                "const at = performance.now(); module.take(at - 2000, 1e12 + 900, at, 1); const seen = [module.now()];"
                        + " module.take(at - 2, 1e12 + 1000, at, 1); seen.push(module.now());"
                        + " while (performance.now() < at + 100); const passed = performance.now() - at;"
                        + " seen.push(module.now()); const [slow, quick, later] = seen.map((time) => time - 1e12);"
                        + " return slow >= 1900 && quick >= slow && later > quick && later < 1901 + passed * 0.6;");
        assertThat(shown).isEqualTo(true);
    }

    @Test
    void twelveHoursWrongDoNotMatter() {
        assertThat((boolean) page.evaluate("() => Math.abs(Date.now() - performance.timeOrigin) > 40000000"))
                .isTrue();
        assertShowsTheServersTime();
        measure();
        assertShowsTheServersTime();
        assertThat(number("clock.js", "return module.doubt();")).isLessThan(MOST_APART);
    }

    @ParameterizedTest
    @ValueSource(longs = {2, -2})
    void nobodySetsItByHand(long hours) {
        measure();
        page.evaluate("millis => window.turn(millis)", (double)
                Duration.ofHours(hours).toMillis());
        assertShowsTheServersTime();
        page.waitForRequest("**/clock", () -> {});
        measure();
        assertShowsTheServersTime();
    }

    /** What a device takes for a moment was an hour, and only its time of day shows it. */
    @Test
    void afterSleepTheServerIsAsked() {
        measure();
        server.pass(Duration.ofHours(1));
        page.evaluate("() => window.turn(3600000)");
        anHourIsSeen();
        assertShowsTheServersTime();
    }

    @Test
    void afterSleepWithoutAServerTheDevicesOwnTimeIsAllThereIs() {
        measure();
        page.route("**/clock", route -> route.abort());
        server.pass(Duration.ofHours(1));
        page.evaluate("() => window.turn(3600000)");
        anHourIsSeen();
        assertThat(in("clock.js", "return module.doubt() === Infinity;")).isEqualTo(true);
        page.unroute("**/clock");
        measure();
        assertShowsTheServersTime();
    }

    /** A beat has lain somewhere, nobody knows how long: only what can't be is looked into. */
    @ParameterizedTest
    @CsvSource({"0, false", "-700, false", "-900, true", "-60000, true", "500, true"})
    void aBeatMovesNothingButMayCauseAQuestion(long sinceSent, boolean asks) {
        measure();
        var asked = in(
                "sync.js",
                "const clock = await import('" + server.asset("clock.js")
                        + "'); const fetch = window.fetch; let asked = 0;"
                        + " window.fetch = (...given) => { asked++; return fetch(...given); };"
                        + " await module.hear(clock.now() + (" + sinceSent
                        + "), 1); window.fetch = fetch; return asked > 0;");
        assertThat(asked).isEqualTo(asks);
        assertShowsTheServersTime();
    }

    @Test
    void aBeatThatCannotBeIsBelievedWhenNobodyAnswers() {
        measure();
        page.route("**/clock", route -> route.abort());
        assertThat(
                        number(
                                "sync.js",
                                "const clock = await import('" + server.asset("clock.js") + "');"
                                        + " const told = clock.now() + 60000; await module.hear(told, 1); return clock.now() - told;"))
                .isBetween(0.0, 1000.0);
    }

    /** The next page that opens has nothing but what was kept and the device's own clock, however wrong. */
    @Test
    void theLastKnownTimeIsKeptForAPageWithoutAServer() {
        measure();
        page.route("**/clock", route -> route.abort());
        in("clock.js", "module.set(0);");
        in("sync.js", "module.recall();");
        assertShowsTheServersTime();
        assertThat(in("clock.js", "return module.doubt() === Infinity;")).isEqualTo(true);
    }
}
