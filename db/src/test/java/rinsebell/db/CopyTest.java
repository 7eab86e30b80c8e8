package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How copies are named, and for how long they are kept. */
final class CopyTest {

    private static final Instant NOON = Instant.parse("2026-11-28T12:00:00Z");

    @TempDir
    Path folder;

    @Test
    void aCopyIsNamedAfterTheInstantInUtcAndTheNumberOfItsFacts() {
        assertThat(Copy.named(folder, NOON, 345).file()).isEqualTo(folder.resolve("20261128T120000Z-345.sql.gz"));
    }

    /** Facts only become more; a clock can be set back. */
    @Test
    void theNewestComesFirstThoughTheClockWasSetBack() throws Exception {
        Copy before = written(Copy.named(folder, NOON.plus(Duration.ofDays(400)), 10));
        Copy after = written(Copy.named(folder, NOON, 200));
        Copy again = written(Copy.named(folder, NOON.plusSeconds(1), 200));
        Files.writeString(folder.resolve("unfinished"), "");
        Files.writeString(folder.resolve("20261399T990000Z-1.sql.gz"), "");
        Files.writeString(folder.resolve("20261128T120000Z-345.sql.gz.part"), "");

        assertThat(Copy.in(folder)).containsExactly(again, after, before);
        assertThat(Copy.in(folder.resolve("none"))).isEmpty();
    }

    @Test
    void theLast24AndTheLastOfEachOf14DaysAreKept() {
        List<Copy> hourly = hourly(24 * 40);
        List<Copy> kept = new ArrayList<>(hourly);
        kept.removeAll(Copy.expired(hourly, NOON));

        assertThat(kept.subList(0, 24)).isEqualTo(hourly.subList(0, 24));
        assertThat(kept.subList(24, kept.size()))
                .extracting(copy -> copy.at().toString())
                .startsWith("2026-11-26T23:00:00Z", "2026-11-25T23:00:00Z")
                .endsWith("2026-11-15T23:00:00Z", "2026-11-14T23:00:00Z")
                .hasSize(13);
    }

    /** What was erased must not live for ever in a copy, however seldom the server runs. */
    @Test
    void noneIsKeptForMoreThan14Days() {
        Copy old = Copy.named(folder, NOON.minus(Duration.ofDays(14)).minusMillis(1), 1);
        Copy notYet = Copy.named(folder, NOON.minus(Duration.ofDays(14)), 2);

        assertThat(Copy.expired(List.of(notYet, old), NOON)).containsExactly(old);
    }

    /** While the clock of the machine was wrong, a copy was made each hour; they go as others come. */
    @Test
    void oneThatSeemsToComeFromTheFutureIsNotKeptForLong() {
        List<Copy> copies = new ArrayList<>(hourly(24));
        Copy wrong = Copy.named(folder, NOON.plus(Duration.ofDays(3000)), 1);
        assertThat(Copy.expired(List.of(copies.get(0), wrong), NOON)).isEmpty();
        copies.add(wrong);

        assertThat(Copy.expired(copies, NOON)).containsExactly(wrong);
    }

    private List<Copy> hourly(int times) {
        List<Copy> copies = new ArrayList<>();
        for (int hour = 0; hour < times; hour++) {
            copies.add(Copy.named(folder, NOON.minus(Duration.ofHours(hour)), 10_000L - hour));
        }
        return copies;
    }

    private static Copy written(Copy copy) throws Exception {
        Files.writeString(copy.file(), "");
        return copy;
    }
}
