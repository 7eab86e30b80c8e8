package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A device that slept, in a real browser: its time of day has gone on and its steady clock has not, or both have, as is
 * usual on some systems.
 */
class WakeIT extends SamplePages {
    /** Within so many milliseconds of the wake it rings with what fell due meanwhile; common practice, no source. */
    private static final double SOON = 2_000;

    private static final double MOST_APART = 100;
    private static final Duration SLEPT = Duration.ofMinutes(10);
    private static final Predicate<String> STREAM = address -> address.contains("/feed?");

    /** {@code sleep} lets the time of day go on without the steady clock, {@code faint} both of them. */
    private static final String SLEEP = """
            (() => {
              const steady = performance.now.bind(performance);
              const date = Date.now;
              let slept = 0;
              let fainted = 0;
              window.sleep = (millis) => (slept += millis);
              window.faint = (millis) => (fainted += millis);
              performance.now = () => steady() + fainted;
              Date.now = () => date() + slept + fainted;
            })()""";

    private Page page;

    @BeforeEach
    void open() {
        page = chromium.page();
        page.setDefaultTimeout(10_000);
        page.addInitScript(SLEEP);
    }

    @AfterEach
    void close() {
        Chromium.close(page);
    }

    private void measure() {
        assertThat(in(page, "sync.js", "return module.measure();")).isEqualTo(true);
    }

    private double shown() {
        return ((Number) in(page, "clock.js", "return module.now();")).doubleValue();
    }

    /** The screen's time lies between two readings of the server's, but for what it may be wrong. */
    private void assertShowsTheServersTime() {
        var before = server.now();
        var shown = shown();
        assertThat(shown).isBetween(before - MOST_APART, server.now() + MOST_APART);
    }

    private void sleep() {
        server.pass(SLEPT);
        page.evaluate("millis => window.sleep(millis)", (double) SLEPT.toMillis());
    }

    /** Within two minutes a check and a rinse fall due on the sample floor; nothing rings for the desk before. */
    @Test
    void ringsSoonAfterTheWakeThoughNobodyAnswers() {
        page.navigate(server.url("floor"));
        page.evaluate("() => document.documentElement.dataset.ear = 'desk'");
        measure();
        page.waitForFunction("() => document.documentElement.dataset.ring === 'calm'");
        // Neither refused nor answered: the slowest way in which a server can be away.
        page.route("**/{clock,feed,feed/once}**", route -> {});
        var took = page.evaluate("""
                (millis) => new Promise((done) => {
                  const woke = performance.now();
                  const root = document.documentElement;
                  const seen = new MutationObserver(() => root.dataset.ring === 'high' && done(performance.now() - woke));
                  seen.observe(root, { attributeFilter: ['data-ring'] });
                  window.sleep(millis);
                })""", (double) SLEPT.toMillis());
        assertThat(((Number) took).doubleValue()).isLessThan(SOON);
    }

    /** What the server said before the sleep, and the device reads after it, is ten minutes old. */
    @Test
    void whatWasAskedBeforeTheSleepTellsNothing() {
        page.navigate(server.url("chair"));
        measure();
        var asked = new CopyOnWriteArrayList<Route>();
        var told = server.now();
        page.route("**/clock", route -> {
            asked.add(route);
            if (asked.size() > 1) {
                route.resume();
            }
        });
        in(page, "sync.js", "module.measure().then((heard) => (window.heard = heard));");
        page.waitForCondition(() -> asked.size() == 1);
        sleep();
        // Long before the first question's patience is over.
        page.waitForCondition(() -> asked.size() > 1, new Page.WaitForConditionOptions().setTimeout(SOON));
        asked.get(0).fulfill(said(told));
        page.waitForFunction("() => window.heard === true");
        assertShowsTheServersTime();
    }

    /** Where the steady clock goes on in sleep nothing jumps, but no question takes ten minutes. */
    @Test
    void anAnswerThatTookImplausiblyLongTellsNothing() {
        page.navigate(server.url("chair"));
        measure();
        var asked = new CopyOnWriteArrayList<Route>();
        page.route("**/clock", route -> {
            asked.add(route);
            if (asked.size() > 1) {
                route.abort();
            }
        });
        in(page, "sync.js", "module.measure().then((heard) => (window.heard = heard));");
        page.waitForCondition(() -> asked.size() == 1);
        var told = server.now();
        server.pass(SLEPT);
        page.evaluate("millis => window.faint(millis)", (double) SLEPT.toMillis());
        asked.get(0).fulfill(said(told));
        page.waitForFunction("() => window.heard === false");
        assertShowsTheServersTime();
    }

    private static Route.FulfillOptions said(long now) {
        return new Route.FulfillOptions()
                .setContentType("application/json")
                .setHeaders(SampleServer.OURS)
                .setBody("{\"now\":" + now + ",\"speed\":1}");
    }

    /** A stream from before the sleep may be dead and look open, and 12 s of the steady clock are long. */
    @Test
    void theFeedIsOpenedAnewAtOnce() {
        var opened = new AtomicInteger();
        page.route(STREAM, route -> opened.incrementAndGet());
        page.navigate(server.url("floor"));
        page.waitForCondition(() -> opened.get() == 1);
        page.setDefaultTimeout(SOON);
        page.evaluate("millis => window.sleep(millis)", (double) SLEPT.toMillis());
        page.waitForCondition(() -> opened.get() == 2);
        page.waitForFunction("() => document.getElementById('link').classList.contains('stale')");
    }

    /**
     * Whoever takes a hidden page up again, or goes back to one, sees the server's time at once. A browser without a screen
     * hides no page, so the signs are given here.
     */
    @Test
    void aPageThatIsSeenAgainAsksForTheTimeAndTheFeed() {
        var opened = new AtomicInteger();
        page.route(STREAM, route -> opened.incrementAndGet());
        page.navigate(server.url("floor"));
        page.waitForCondition(() -> opened.get() >= 1);
        for (var sign : List.of(
                "document.dispatchEvent(new Event('visibilitychange'))",
                "window.dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }))")) {
            measure();
            server.pass(SLEPT);
            page.evaluate("millis => window.faint(millis)", (double) SLEPT.toMillis());
            server.pass(Duration.ofHours(1));
            var before = opened.get();
            page.evaluate(sign);
            // Sooner than the page opens by itself what has been silent for long.
            page.waitForCondition(() -> opened.get() > before, new Page.WaitForConditionOptions().setTimeout(1_000));
            page.waitForCondition(() -> Math.abs(shown() - server.now()) < MOST_APART);
        }
    }
}
