package rinsebell.demo.browser;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real program is killed under a screen that hangs there, and started again on what it left. */
@Tag("measures")
class RestartIT {
    /**
     * What a start may take of the processors, up to the first page, for each second that the same program takes on an empty
     * folder: 1.26 to 1.37 was measured here while the machine was busy with seven times what it can do. How long a start takes
     * is measured by {@code StartAndMemory}.
     */
    private static final double OF_A_START_WITH_NOTHING = 1.5;

    /** The goal for a screen that was left open, from then on. */
    private static final double FOLLOW_MILLIS = 5_000;

    /** Shown in the strip. */
    private static final int FIRST = 3;

    private static final Pattern RUN = Pattern.compile("id=\"bells\" data-n=\"([0-9a-f]+-)\\d+\"");
    private static final Pattern NOW = Pattern.compile("data-now=\"(\\d+)\"");
    private static final Pattern HEAD = Pattern.compile("href=\"/visits/(\\d+)\"");
    private static final Pattern BELL =
            Pattern.compile("<strong>([^<]*)</strong> <span class=\"what\">([^<]*)</span>\\s*"
                    + "<time data-due=\"(\\d+)\" datetime=\"[^\"]*\">([^<]*)</time>");

    @TempDir
    private Path folder = Path.of("");

    /** Five rinses are long past, and one more every 20 s. */
    @Test
    void overdueBellsRingFirstAndAnOpenScreenFollows() throws Exception {
        try (var demo = busy();
                var browsing = new Browsing()) {
            var wall = connected(browsing.screen(Size.WALL), demo.url() + "/");
            demo.kill();
            demo.startAgain();
            var page = new Asking(demo.url()).page("/");
            assertFollows(wall, page);
            assertOverdueFirst(page);
        }
    }

    /** Both start at the same moment, and nobody else asks them for anything. */
    @Test
    void aStartTakesHardlyMoreThanWithNothingToRead() throws Exception {
        try (var demo = busy();
                var nothing = RunningDemo.withNothing(folder.resolve("nothing"))) {
            demo.kill();
            nothing.kill();
            RunningDemo.startAgain(demo, nothing);
            new Asking(demo.url()).page("/");
            new Asking(nothing.url()).page("/");
            var took = demo.processorTime();
            var empty = nothing.processorTime();
            System.out.printf(
                    "a start and a page took %d ms of a processor; with nothing to read %d ms%n",
                    took.toMillis(), empty.toMillis());
            assertThat(took.toMillis()).isLessThan((long) (OF_A_START_WITH_NOTHING * empty.toMillis()));
        }
    }

    private RunningDemo busy() throws Exception {
        return RunningDemo.in(BusySalon.in(folder.resolve("data"), 24, ofSeconds(-380), ofSeconds(20)));
    }

    /** A copy of the tables, a press after it, and then a file that is no database. */
    @Test
    void aDamagedDatabaseIsMadeAgainUnderAnOpenScreen() throws Exception {
        try (var demo = RunningDemo.in(folder.resolve("data"));
                var browsing = new Browsing()) {
            var asking = new Asking(demo.url());
            await().until(this::isCopied);
            var desk = connected(browsing.screen(Size.TABLET), demo.url() + "/desk");
            var heads = heads(asking);
            var visit = heads.get(0);
            var before = labels(asking, heads);
            asking.press("/api/visits/" + visit + "/scalp", UUID.randomUUID().toString(), "{\"finding\":\"fine\"}");
            var log = asking.page("/api/log?visit=" + visit);
            demo.kill();
            Files.writeString(folder.resolve("data").resolve("rinsebell.mv.db"), "no database".repeat(1_000));
            demo.startAgain();
            assertFollows(desk, asking.page("/desk"));
            assertThat(heads(asking)).isEqualTo(heads);
            assertThat(asking.page("/api/log?visit=" + visit)).isEqualTo(log);
            assertThat(labels(asking, heads)).as("what the copy alone has").isEqualTo(before);
            assertThat(asking.page("/day"))
                    .contains("the database had to be made again from the journal and a copy. Labels, notes and client "
                            + "records that came after");
        }
    }

    private static Page connected(Page screen, String url) {
        screen.navigate(url);
        screen.waitForFunction("() => document.getElementById('link').textContent === 'connected'");
        return screen;
    }

    private boolean isCopied() throws IOException {
        try (var copies = Files.list(folder.resolve("data").resolve("copies"))) {
            return copies.anyMatch(copy -> copy.toString().endsWith(".gz"));
        }
    }

    private static List<String> heads(Asking asking) {
        return HEAD.matcher(asking.page("/"))
                .results()
                .map(found -> found.group(1))
                .distinct()
                .sorted()
                .toList();
    }

    private static String labels(Asking asking, List<String> heads) {
        return heads.stream()
                .map(visit -> found(Pattern.compile("\"label\":\"([^\"]+)\""), asking.page("/api/visits/" + visit)))
                .map(label -> label.group(1))
                .collect(Collectors.joining(", "));
    }

    /** Nobody touches it. */
    private static void assertFollows(Page screen, String page) {
        var begin = SalonTime.steadyMillis();
        screen.waitForFunction(
                "run => document.getElementById('bells').dataset.n.startsWith(run)"
                        + " && document.getElementById('link').textContent === 'connected'",
                found(RUN, page).group(1),
                new Page.WaitForFunctionOptions().setTimeout(4 * FOLLOW_MILLIS));
        var took = SalonTime.steadyMillis() - begin;
        System.out.printf("a screen that was left open followed after %.0f ms%n", took);
        assertThat(took).isLessThan(FOLLOW_MILLIS);
    }

    /** Those on which it has been for too long, the longest first, with how long ago that began. */
    private static void assertOverdueFirst(String page) {
        var now = Long.parseLong(found(NOW, page).group(1));
        var bells = BELL.matcher(page).results().limit(FIRST).toList();
        assertThat(bells).extracting(bell -> bell.group(1)).containsExactly("chair 1", "chair 2", "chair 3");
        assertThat(bells).allSatisfy(bell -> {
            assertThat(bell.group(2)).isEqualTo("rinse now");
            assertThat(bell.group(4)).isEqualTo(past(now - Long.parseLong(bell.group(3))));
        });
    }

    private static String past(long millis) {
        var seconds = millis / 1_000;
        return "+%02d:%02d".formatted(seconds / 60, seconds % 60);
    }

    private static MatchResult found(Pattern what, String page) {
        var found = what.matcher(page);
        assertThat(found.find()).as("%s is there", what).isTrue();
        return found.toMatchResult();
    }
}
