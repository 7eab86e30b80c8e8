package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Where.onScalp;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;

/** A data folder made anew from a copy, or from another data folder. */
final class RestoreTest {

    private static final Instant NOW = TEN.plusSeconds(7200);

    @TempDir
    Path parent;

    private Path path;
    private Path anew;
    private Path copy;
    private Story story;
    private TextId label;
    private final ClientId client = new ClientId(1);

    @BeforeEach
    void aMorningWithACopy() throws Exception {
        path = parent.resolve("data");
        anew = parent.resolve("new");
        story = Story.begins();
        Head here = story.at("09:00").arrivesFine();
        here.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.REGROWTH));
        label = new TextId(here.id().value());
        with(path, store -> {
            store.append(List.of(Told.press(story.facts().get(0), story.facts().get(1))));
            Told.save(store, story.facts());
            assertThat(store.clients().add("M. A.", "press-of-client")).isEqualTo(client);
            store.copies().make(TEN);
        });
        copy = Copy.in(path.resolve("copies")).get(0).file();
    }

    @Test
    void aCopyAloneMakesTheSameFloor() throws Exception {
        Contents contents = Restore.restore(copy, anew, NOW);

        assertThat(contents.facts()).isEqualTo(story.facts().size());
        with(anew, store -> {
            assertThat(Floor.of(store.load()).visits())
                    .containsExactlyElementsOf(story.floor().visits());
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.texts(List.of(label)).get(label)).isEqualTo(Told.label(label.seq()));
            assertThat(store.clients().card(client)).isPresent();
            assertThat(store.press("press-1")).isPresent();
            Rebuild told = store.lastRebuild().orElseThrow();
            assertThat(told.source()).isEqualTo(Rebuild.Source.COPY_ALONE);
            assertThat(told.at()).isEqualTo(NOW);
            assertThat(told.copied())
                    .isEqualTo(story.facts().get(story.facts().size() - 1).recorded());
            story.arrives();
            Told.save(store, story.facts());
        });
        with(anew, store -> assertThat(store.load()).isEqualTo(story.facts()));
    }

    /** The journal of a restored folder can make its database again, as every journal can. */
    @Test
    void aRestoredFolderHasAJournalThatTellsEverything() throws Exception {
        Restore.restore(copy, anew, NOW);
        Files.delete(anew.resolve("rinsebell.mv.db"));

        with(anew, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.press("press-1").orElseThrow().outcome()).isEqualTo("{\"said\":\"press-1\"}");
        });
    }

    @Test
    void aFolderIsRestoredWithWhatCameAfterItsCopies() throws Exception {
        TextId late = new TextId(story.arrives().id().value());
        with(path, store -> Told.save(store, story.facts()));

        assertThat(Restore.restore(path, anew, NOW).facts())
                .isEqualTo(story.facts().size());
        with(anew, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.texts(List.of(label, late))).hasSize(2);
            assertThat(store.lastRebuild()).isEmpty();
        });
    }

    @Test
    void aFolderWhoseDatabaseIsDamagedIsRestoredFromItsCopy() throws Exception {
        Files.write(path.resolve("rinsebell.mv.db"), new byte[9000]);
        Restore.restore(path, anew, NOW);

        with(anew, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.clients().card(client)).isPresent();
        });
        assertThat(path.resolve("rinsebell.mv.db")).hasBinaryContent(new byte[9000]);
    }

    /** What was erased is known where it was erased; a copy that was carried elsewhere can't know. */
    @Test
    void whatWasErasedComesBackOnlyFromACopyThatWasCarriedAway() throws Exception {
        Path carried = Files.copy(copy, parent.resolve("carried.sql.gz"));
        with(path, store -> store.clients().erase(client, Set.of()));
        Restore.restore(copy, anew, NOW);
        with(anew, store -> {
            assertThat(store.clients().card(client)).isEmpty();
            assertThat(store.clients().add("another", "other").value()).isGreaterThan(client.value());
        });

        Path other = parent.resolve("from carried");
        Restore.restore(carried, other, NOW);
        with(other, store -> assertThat(store.clients().card(client)).isPresent());
    }

    @Test
    void nothingIsWrittenOverAndNothingIsLeftOfWhatFails() throws Exception {
        Path full = Files.createDirectory(parent.resolve("full"));
        Files.writeString(full.resolve("something"), "");
        assertThatThrownBy(() -> Restore.restore(copy, full, NOW))
                .isInstanceOf(NotRestored.class)
                .hasMessageContaining("is not empty");
        assertThatThrownBy(() -> Restore.restore(parent.resolve("nowhere"), anew, NOW))
                .isInstanceOf(NotRestored.class);
        assertThatThrownBy(() -> Restore.restore(full, anew, NOW))
                .isInstanceOf(NotRestored.class)
                .hasMessageContaining("no data folder");
        assertThatThrownBy(() -> Restore.restore(path, path.resolve("in"), NOW)).isInstanceOf(NotRestored.class);

        byte[] bytes = Files.readAllBytes(copy);
        bytes[bytes.length / 2] ^= 1;
        Files.write(copy, bytes);
        assertThatThrownBy(() -> Restore.restore(copy, anew, NOW)).isInstanceOf(CopyUnreadable.class);
        assertThat(anew).isEmptyDirectory();
    }

    @Test
    void aFolderInWhichAServerWorksIsLeftAlone() throws Exception {
        with(
                path,
                store -> assertThatThrownBy(() -> Restore.restore(path, anew, NOW))
                        .isInstanceOf(FolderInUse.class));
        with(
                path,
                store -> assertThat(Restore.restore(copy, anew, NOW).facts())
                        .isEqualTo(story.facts().size()));
    }

    @Test
    void whatIsInACopyIsToldWithoutTouchingIt() throws Exception {
        byte[] before = Files.readAllBytes(copy);
        Contents contents = Contents.of(copy);

        assertThat(contents.facts()).isEqualTo(story.facts().size());
        assertThat(contents.newest())
                .isEqualTo(story.facts().get(story.facts().size() - 1).recorded());
        assertThat(contents.texts()).isEqualTo(1);
        assertThat(contents.clients()).isEqualTo(1);
        assertThat(copy).hasBinaryContent(before);
    }
}
