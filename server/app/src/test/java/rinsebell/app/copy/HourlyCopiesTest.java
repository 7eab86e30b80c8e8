package rinsebell.app.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.time.TimeSources;
import rinsebell.db.DataFolder;
import rinsebell.db.SalonStore;

/** When a copy is made, and what becomes of one that fails; with a real store, and time by hand. */
class HourlyCopiesTest {

    @TempDir
    private Path path = Path.of("");

    private final Wall wall = new Wall();
    private boolean quiet = true;
    private DataFolder folder;
    private SalonStore store;
    private HourlyCopies copies;

    private static final class Wall implements TimeSources {

        private Instant now = Instant.parse("2026-11-28T12:00:00Z");

        void passes(Duration time) {
            now = now.plus(time);
        }

        @Override
        public Instant wall() {
            return now;
        }

        @Override
        public long monotonicNanos() {
            return 0;
        }

        @Override
        public OptionalLong uptimeMillis() {
            return OptionalLong.empty();
        }

        @Override
        public String bootId() {
            return "";
        }
    }

    @BeforeEach
    void aStore() throws Exception {
        folder = DataFolder.open(path);
        store = SalonStore.open(folder, wall.now);
        copies = copies();
    }

    private HourlyCopies copies() {
        return new HourlyCopies(store.copies(), new Compacting(store.compactions(), () -> quiet), wall);
    }

    @AfterEach
    void close() throws Exception {
        copies.close();
        store.close();
        folder.close();
    }

    @Test
    void oneIsMadeAtTheStartAndOneEachHour() throws Exception {
        copies.round();
        assertThat(names()).containsExactly("20261128T120000Z-0.sql.gz");
        wall.passes(HourlyCopies.APART.minusMillis(1));
        copies.round();
        assertThat(names()).hasSize(1);
        wall.passes(Duration.ofMillis(1));
        copies.round();
        assertThat(names()).hasSize(2).contains("20261128T130000Z-0.sql.gz");
    }

    @Test
    void aRestartWithinTheHourMakesNoOther() throws Exception {
        copies.round();
        wall.passes(Duration.ofMinutes(59));
        copies().round();

        assertThat(names()).hasSize(1);
    }

    @Test
    void aClockThatWasSetBackKeepsNoCopyFromBeingMade() throws Exception {
        copies.round();
        wall.passes(Duration.ofDays(-400));
        copies.round();
        copies.round();

        assertThat(names()).hasSize(2);
    }

    @Test
    void oneThatFailsIsToldUntilOneIsMade() throws Exception {
        Instant first = wall.now;
        Files.writeString(path.resolve("copies"), "a file where the folder should be");
        copies.round();
        assertThat(copies.failingSince()).contains(first);
        wall.passes(Duration.ofMinutes(1));
        copies.round();
        assertThat(copies.failingSince()).contains(first);

        Files.delete(path.resolve("copies"));
        copies.round();
        assertThat(copies.failingSince()).isEmpty();
        assertThat(names()).hasSize(1);
    }

    /** A copy goes before it: whatever becomes of the file, what stands nowhere else is in that. */
    @Test
    void onceSomethingWasErasedTheFileIsCompactedBehindACopy() throws Exception {
        copies.round();
        assertThat(store.compactions().last()).as("nothing was erased").isEmpty();
        store.clients().erase(store.clients().add("A", "press-of-a"), Set.of());
        wall.passes(Duration.ofMinutes(1));
        copies.round();

        assertThat(store.compactions().last()).contains(wall.now);
        assertThat(store.copies().newest()).contains(wall.now);
        wall.passes(Duration.ofMinutes(1));
        copies.round();
        assertThat(names()).as("once").hasSize(2);
    }

    @Test
    void aFloorThatIsNeverQuietPutsItOffForTenMinutesAtMost() throws Exception {
        quiet = false;
        store.clients().erase(store.clients().add("A", "press-of-a"), Set.of());
        for (int round = 0; round < 10; round++) {
            copies.round();
            assertThat(store.compactions().last()).as("minute %d", round).isEmpty();
            wall.passes(Duration.ofMinutes(1));
        }
        copies.round();
        assertThat(store.compactions().last()).contains(wall.now);
    }

    /** Each try makes a copy, and a copy a minute would soon push all earlier ones out. */
    @Test
    void oneThatFailsIsTriedAgainWithTheNextHoursCopy() throws Exception {
        store.clients().erase(store.clients().add("A", "press-of-a"), Set.of());
        Path inTheWay = path.resolve("rinsebell-new.mv.db");
        Files.createDirectory(inTheWay);
        Files.writeString(inTheWay.resolve("x"), "nothing can be written there");
        copies.round();
        wall.passes(Duration.ofMinutes(1));
        copies.round();
        assertThat(names()).hasSize(1);
        assertThat(copies.failingSince()).as("the copy itself was made").isEmpty();
        Files.delete(inTheWay.resolve("x"));
        Files.delete(inTheWay);
        wall.passes(Duration.ofMinutes(58));
        copies.round();
        assertThat(store.compactions().last()).isEmpty();
        wall.passes(Duration.ofMinutes(1));
        copies.round();
        assertThat(store.compactions().last()).contains(wall.now);
    }

    private List<String> names() throws Exception {
        try (var files = Files.list(path.resolve("copies"))) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
