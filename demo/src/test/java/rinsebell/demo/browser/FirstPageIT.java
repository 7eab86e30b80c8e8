package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.db.DataFolder;
import rinsebell.db.SalonStore;
import rinsebell.demo.DemoHere;

/** A salon that nobody has set up yet, in the browser of whoever is about to. */
class FirstPageIT {
    @Test
    void itsScriptsRun(@TempDir Path folder) throws Exception {
        try (var data = DataFolder.open(folder.resolve("data"))) {
            SalonStore.open(data, Instant.EPOCH).close();
        }
        try (var demo = DemoHere.in(folder.resolve("data"));
                var browsing = new Browsing()) {
            var tablet = browsing.screen(Size.TABLET);
            tablet.navigate(demo.url() + "/");
            assertThat(tablet.title()).startsWith("Set-up");
            assertThat((String) tablet.evaluate(
                            "async () => (await import(document.querySelector('script[type=module]').src"
                                    + ".replace('main.js', 'clock.js'))).clockTime(0)"))
                    .isEqualTo("00:00");
            assertThat(browsing.faults()).isEmpty();
        }
    }
}
