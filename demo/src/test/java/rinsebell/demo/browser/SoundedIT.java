package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a tablet sounded while its server was dead comes to the lead's page when that is back. */
class SoundedIT {
    private static final String KEPT = "() => JSON.parse(localStorage.getItem('rinsebell-sounded') ?? '[]')";

    @Test
    void whatSoundedWithoutTheServerIsToldLater(@TempDir Path folder) throws Exception {
        try (var demo = RunningDemo.in(folder.resolve("data"));
                var browsing = new Browsing()) {
            var tablet = browsing.screen(Size.TABLET);
            ringsForEverybody(tablet, demo);
            var failed = new AtomicInteger();
            tablet.onRequestFailed(request -> {
                if (request.url().endsWith("/sounded")) {
                    failed.incrementAndGet();
                }
            });
            demo.kill();
            // Only a touch lets a browser sound; what rings already is sounded at once then.
            tablet.mouse().click(2, 2);
            tablet.waitForFunction("() => JSON.parse(localStorage.getItem('rinsebell-sounded') ?? '[]').length > 0");
            tablet.waitForCondition(() -> failed.get() > 0, new Page.WaitForConditionOptions().setTimeout(20_000));
            var sounded = kept(tablet);
            assertThat(sounded).isNotEmpty();
            demo.startAgain();
            tablet.waitForCondition(
                    () -> kept(tablet).isEmpty(), new Page.WaitForConditionOptions().setTimeout(30_000));
            assertThat(told(tablet, demo)).containsExactly("1", String.valueOf(sounded.size()), latest(sounded));
        }
    }

    private static void ringsForEverybody(Page tablet, RunningDemo demo) {
        tablet.navigate(demo.url() + "/");
        tablet.evaluate("async () => (await import(document.querySelector('script[type=module]').src"
                + ".replace('main.js', 'device.js'))).choose({ ear: 'all' })");
        tablet.reload();
        tablet.waitForFunction("() => document.getElementById('link').textContent === 'connected'");
        tablet.waitForFunction("() => ['low', 'medium', 'high'].includes(document.documentElement.dataset.ring)");
    }

    private static List<String> kept(Page tablet) {
        return ((List<?>) tablet.evaluate(KEPT)).stream().map(String::valueOf).toList();
    }

    /** Devices, soundings, and the latest of all devices, from the lead's page; it is written there a little later. */
    private static List<String> told(Page tablet, RunningDemo demo) {
        var row = tablet.locator("#sounds tbody tr").first();
        tablet.waitForCondition(() -> {
            tablet.navigate(demo.url() + "/lead");
            return row.count() > 0;
        });
        var cells = row.locator("td").allTextContents();
        return List.of(cells.get(0), cells.get(1), cells.get(4));
    }

    /**
     * By what the tablet kept: a bell's id, since when it rang, for whom, when it sounded, since when the tablet listens. Every
     * bell rang before that, or was due later.
     */
    private static String latest(List<String> sounded) {
        var latest = sounded.stream()
                .map(line -> line.split(" "))
                .mapToLong(part -> Long.parseLong(part[3]) - Math.max(Long.parseLong(part[1]), Long.parseLong(part[4])))
                .max()
                .orElseThrow();
        assertThat(latest).isBetween(0L, 9_999L);
        return String.format(Locale.UK, "%.1f s", latest / 1000.0);
    }
}
