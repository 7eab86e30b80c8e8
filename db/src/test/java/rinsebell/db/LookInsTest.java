package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.db.LookIns.Added.MADE;
import static rinsebell.db.LookIns.Added.MADE_BEFORE;
import static rinsebell.db.LookIns.Added.TOO_MANY;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.TEN;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.db.LookIns.Fresh;
import rinsebell.floor.testing.Story;

/** Links that may look in: made, opened, taken back, and never brought back. */
final class LookInsTest {

    private static final String HASH = "a".repeat(64);
    private static final String OTHER = "b".repeat(64);

    @TempDir
    Path parent;

    private static Fresh fresh(String name, String hash) {
        return new Fresh(name, hash, "press-" + name, TEN);
    }

    private Path path() {
        return parent.resolve("data");
    }

    @Test
    void aLinkOutlastsARestart() throws Exception {
        with(
                path(),
                store -> assertThat(store.lookIns().add(fresh("👩‍🦰".repeat(8), HASH), 20))
                        .isEqualTo(MADE));
        with(path(), store -> {
            assertThat(store.lookIns().open(HASH, TEN)).isTrue();
            assertThat(store.lookIns().open(OTHER, TEN)).isFalse();
            assertThat(store.lookIns().all()).singleElement().satisfies(link -> {
                assertThat(link.name()).isEqualTo("👩‍🦰".repeat(8));
                assertThat(link.made()).isEqualTo(TEN);
                assertThat(link.opened()).isEqualTo(TEN);
            });
        });
    }

    /** A page that is open all day writes a row once a minute. */
    @Test
    void whenItWasOpenedIsKeptToTheMinute() throws Exception {
        with(path(), store -> {
            LookIns links = store.lookIns();
            links.add(fresh("phone", HASH), 20);
            assertThat(links.all().get(0).opened()).isNull();
            links.open(HASH, TEN);
            links.open(HASH, TEN.plus(LookIns.NOTED_EVERY).minusMillis(1));
            assertThat(links.all().get(0).opened()).isEqualTo(TEN);
            links.open(HASH, TEN.plus(LookIns.NOTED_EVERY));
            assertThat(links.all().get(0).opened()).isEqualTo(TEN.plus(LookIns.NOTED_EVERY));
        });
    }

    @Test
    void theSamePressMakesOne() throws Exception {
        with(path(), store -> {
            LookIns links = store.lookIns();
            assertThat(links.add(fresh("phone", HASH), 20)).isEqualTo(MADE);
            assertThat(links.add(fresh("phone", OTHER), 20)).isEqualTo(MADE_BEFORE);
            assertThat(links.open(OTHER, TEN)).isFalse();
            assertThat(links.all()).hasSize(1);
        });
    }

    @Test
    void thereAreOnlySoMany() throws Exception {
        with(path(), store -> {
            LookIns links = store.lookIns();
            assertThat(links.add(fresh("one", HASH), 1)).isEqualTo(MADE);
            assertThat(links.add(fresh("two", OTHER), 1)).isEqualTo(TOO_MANY);
            assertThat(links.add(fresh("two", OTHER), 2)).isEqualTo(MADE);
            assertThat(links.all()).extracting(LookIns.Link::name).containsExactly("two", "one");
        });
    }

    @Test
    void whatWasTakenBackIsGone() throws Exception {
        with(path(), store -> {
            LookIns links = store.lookIns();
            links.add(fresh("phone", HASH), 20);
            links.takeBack(links.all().get(0).id());
            assertThat(links.open(HASH, TEN)).isFalse();
            assertThat(links.all()).isEmpty();
            links.takeBack(1);
        });
    }

    /** Which links were taken back since a copy was made stands nowhere, so it brings none back. */
    @Test
    void noCopyBringsALinkBack() throws Exception {
        Story story = Story.begins();
        story.arrives();
        with(path(), store -> {
            Told.save(store, story.facts());
            store.lookIns().add(fresh("phone", HASH), 20);
            store.copies().make(TEN);
            store.lookIns().takeBack(store.lookIns().all().get(0).id());
        });
        Path copy = Copy.in(path().resolve("copies")).get(0).file();
        Files.delete(path().resolve("rinsebell.mv.db"));
        with(path(), store -> {
            assertThat(store.lastRebuild().orElseThrow().copied()).isEqualTo(TEN);
            assertThat(store.lookIns().open(HASH, TEN)).isFalse();
            assertThat(store.lookIns().all()).isEmpty();
        });
        Restore.restore(copy, parent.resolve("restored"), TEN);
        with(
                parent.resolve("restored"),
                store -> assertThat(store.lookIns().all()).isEmpty());
    }
}
