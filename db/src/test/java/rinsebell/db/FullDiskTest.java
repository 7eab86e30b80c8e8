package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.db.StoreSample.with;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.Ledger.NotSaved;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ClientId;

/** A disk that is full for a while under a running store. */
final class FullDiskTest {

    @TempDir
    Path path;

    private Story story;

    @BeforeEach
    void somebodyIsHere() {
        story = Story.begins();
        story.arrives();
    }

    @Test
    void whatCanNotBeSavedIsSaidAndEverythingGoesOnWhenThereIsRoom() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());
            ClientId known = store.clients().add("M. A.", "press-of-client");
            story.arrives();
            try (FullDisk full = FullDisk.fromTheStart()) {
                assertThatThrownBy(() -> store.clients().add("B. C.", "press-of-other"))
                        .isInstanceOf(DatabaseAway.class)
                        .hasMessageNotContaining("B. C.");
                assertThatThrownBy(() -> Told.save(store, story.facts())).isInstanceOf(NotSaved.class);
                assertThat(store.press("press-1")).isPresent();
                assertThat(store.clients().card(known)).isPresent();
            }
            Told.save(store, story.facts());
            assertThat(store.load()).isEqualTo(story.facts());
            ClientId other = store.clients().add("B. C.", "press-of-other");
            assertThat(store.clients().card(other).orElseThrow().label()).isEqualTo("B. C.");
        });
        with(path, store -> assertThat(store.load()).isEqualTo(story.facts()));
    }

    /** The journal's file is short, the database's is not. */
    @Test
    void aDatabaseThatFindsNoRoomCatchesUpByItself() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());
            story.arrives();
            assertThat(Files.size(path.resolve("rinsebell.mv.db"))).isGreaterThan(20_000);
            try (FullDisk full = new FullDisk(20_000)) {
                Told.save(store, story.facts());
                assertThat(store.press("press-" + story.facts().size())).isPresent();
            }
            story.arrives();
            Told.save(store, story.facts());
            assertThat(store.load()).isEqualTo(story.facts());
        });
        with(path, store -> assertThat(store.lastRebuild()).isEmpty());
    }
}
