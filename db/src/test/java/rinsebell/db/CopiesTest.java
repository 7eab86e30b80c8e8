package rinsebell.db;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Where.onScalp;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.Ledger.NotSaved;
import rinsebell.floor.TextId;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;

/** A database that is lost, and what a copy gives back of what stood nowhere else. */
final class CopiesTest {

    private static final ClientNote NOTE = new ClientNote(ClientNote.Kind.SKIN_TEST_FINE, LocalDate.of(2026, 11, 1));

    @TempDir
    Path parent;

    private Path path;
    private Story story;
    private TextId early;
    private TextId late;
    private final ClientId client = new ClientId(1);

    /** A morning, a copy of it, and one client more who came since. */
    @BeforeEach
    void aMorning() throws Exception {
        path = parent.resolve("data");
        story = Story.begins();
        Head gone = story.at("09:00").arrivesFine();
        var on = gone.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.REGROWTH));
        story.at("09:30");
        gone.rinses(on);
        gone.leaves();
        early = new TextId(story.arrives().id().value());
        with(path, store -> {
            Told.save(store, story.facts());
            store.append(List.of(Told.refusal("no")));
            assertThat(store.clients().add("M. A.", "press-of-client")).isEqualTo(client);
            store.clients().note(client, NOTE);
            store.copies().make(TEN);
        });
        late = new TextId(story.arrives().id().value());
        with(path, store -> Told.save(store, story.facts()));
    }

    @Test
    void aLostDatabaseIsMadeAgainFromTheCopyAndTheJournalSince() throws Exception {
        TreeMap<String, Long> before = rows();
        Files.delete(database());

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.texts(List.of(early, late))).isEqualTo(java.util.Map.of(early, Told.label(early.seq())));
            assertThat(store.clients().card(client).orElseThrow().notes()).containsExactly(NOTE);
            assertThat(store.clients().add("again", "press-of-client")).isEqualTo(client);
            assertThat(store.press("no")).isPresent();
            assertThat(store.press("press-" + late.seq())).isPresent();
            Rebuild told = store.lastRebuild().orElseThrow();
            assertThat(told.source()).isEqualTo(Rebuild.Source.COPY_AND_JOURNAL);
            assertThat(told.copied()).isEqualTo(TEN);
            assertThat(told.lacking()).isZero();
        });
        before.merge("REBUILD", 1L, Long::sum);
        before.merge("TEXT", -1L, Long::sum);
        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void aDamagedDatabaseIsMadeAgainFromTheCopyWhereverItIsDamaged() throws Exception {
        byte[] whole = Files.readAllBytes(database());
        for (int length : List.of(1, 5000, 8192, 12_288, whole.length / 2)) {
            byte[] cut = Arrays.copyOf(whole, length);
            Files.write(database(), cut);

            with(path, store -> {
                assertThat(store.load()).as("cut at byte %d", length).isEqualTo(story.facts());
                assertThat(store.texts(List.of(early)))
                        .as("cut at byte %d", length)
                        .hasSize(1);
                assertThat(store.clients().card(client))
                        .as("cut at byte %d", length)
                        .isPresent();
            });
        }
    }

    /**
     * A flipped bit anywhere but where nothing depends on it: in the time and system of the header (RFC 1952, 2.3.1), and
     * behind the end of the last block, whose byte may have some to spare (RFC 1951, 3.1.1).
     */
    @Test
    void aDamagedCopyIsNotUsedButTheOneBeforeIt() throws Exception {
        with(path, store -> store.copies().make(TEN.plus(Duration.ofHours(1))));
        Path newest = Copy.in(path.resolve("copies")).get(0).file();
        byte[] whole = Files.readAllBytes(newest);
        for (int at :
                List.of(0, 3, 10, 11, 40, whole.length / 2, whole.length - 10, whole.length - 8, whole.length - 1)) {
            byte[] flipped = whole.clone();
            flipped[at] ^= 4;
            assertCopyBeforeIsUsed(newest, flipped);
        }
        for (int length : List.of(0, 5, 100, whole.length / 2, whole.length - 1)) {
            assertCopyBeforeIsUsed(newest, Arrays.copyOf(whole, length));
        }
        assertCopyBeforeIsUsed(newest, "select 1;".getBytes(UTF_8));
    }

    private void assertCopyBeforeIsUsed(Path newest, byte[] damaged) throws Exception {
        Files.write(newest, damaged);
        Files.delete(database());
        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.texts(List.of(early))).hasSize(1);
            assertThat(store.lastRebuild().orElseThrow().copied()).isEqualTo(TEN);
        });
    }

    @Test
    void withoutAnyCopyThatCanBeReadTheJournalIsEnough() throws Exception {
        Files.write(Copy.in(path.resolve("copies")).get(0).file(), new byte[20]);
        Files.delete(database());

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.texts(List.of(early))).isEmpty();
            assertThat(store.lastRebuild().orElseThrow().source()).isEqualTo(Rebuild.Source.JOURNAL);
            assertThat(store.lastRebuild().orElseThrow().copied()).isNull();
        });
    }

    /** A label belongs to a number in the journal, so a copy that goes on further would give it to somebody else. */
    @Test
    void aCopyThatKnowsMoreThanTheJournalIsNotUsedAndThatIsSaid() throws Exception {
        with(path, store -> store.copies().make(TEN.plus(Duration.ofHours(1))));
        Path journal = path.resolve("journal/journal-000000000001.txt");
        List<String> lines = Files.readAllLines(journal);
        Files.writeString(journal, String.join("\n", lines.subList(0, lines.size() - 1)) + "\n");
        Files.delete(database());

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts().subList(0, lines.size() - 1));
            assertThat(store.texts(List.of(early))).hasSize(1);
            assertThat(store.lastRebuild().orElseThrow().copied()).isEqualTo(TEN);
            assertThat(store.lastRebuild().orElseThrow().lacking()).isEqualTo(1);
        });
    }

    @Test
    void aCopyOfAnotherSalonIsNotUsed() throws Exception {
        Path other = parent.resolve("other");
        Story theirs = Story.begins();
        theirs.arrives();
        with(other, store -> {
            Told.save(store, theirs.facts());
            store.clients().add("not ours", "press");
            store.copies().make(TEN.plus(Duration.ofHours(2)));
        });
        Path copy = Copy.in(other.resolve("copies")).get(0).file();
        Files.copy(copy, path.resolve("copies").resolve("20301231T100000Z-" + lastSeq() + ".sql.gz"));
        Files.delete(database());

        with(path, store -> {
            assertThat(store.lastRebuild().orElseThrow().copied()).isEqualTo(TEN);
            assertThat(store.clients().card(client).orElseThrow().label()).isEqualTo("M. A.");
        });
    }

    @Test
    void whatWasErasedSinceTheCopyStaysErased() throws Exception {
        with(path, store -> store.clients().erase(client, Set.of()));
        assertThat(path.resolve("erased.txt")).content().doesNotContain("M. A.");
        Files.delete(database());

        with(path, store -> {
            assertThat(store.clients().card(client)).isEmpty();
            assertThat(store.texts(List.of(early))).hasSize(1);
            assertThat(store.clients().add("another", "other-press").value()).isGreaterThan(client.value());
        });
    }

    @Test
    void anErasureThatWasTornWhenThePowerWentSwallowsNoOther() throws Exception {
        Files.writeString(path.resolve("erased.txt"), "client 7 texts 1");
        with(path, store -> store.clients().erase(client, Set.of()));
        Files.delete(database());

        with(path, store -> assertThat(store.clients().card(client)).isEmpty());
    }

    /** Presses go on while a copy is made; each has a fact, a press, a text and its place in the journal. */
    @Test
    void aCopyIsOfOneMomentThoughPressesGoOn() throws Exception {
        with(path, store -> {
            AtomicBoolean done = new AtomicBoolean();
            Thread pressing = new Thread(() -> {
                while (!done.get()) {
                    story.arrives();
                    save(store);
                }
            });
            pressing.start();
            try {
                for (int time = 0; time < 40; time++) {
                    store.copies().make(TEN.plusSeconds(time));
                    assertOneMoment(Copy.in(path.resolve("copies")).get(0));
                }
            } finally {
                done.set(true);
                pressing.join();
            }
            assertThat(store.lastSeq()).as("presses while copies were made").isGreaterThan(60);
        });
    }

    private static void assertOneMoment(Copy copy) throws Exception {
        Contents contents = Contents.of(copy.file());
        assertThat(contents.facts()).isEqualTo(copy.facts());
        assertThat(contents.texts()).isLessThanOrEqualTo(contents.facts());
    }

    private void save(SalonStore store) {
        try {
            Told.save(store, story.facts());
        } catch (NotSaved e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aCopyThatFailsLeavesNothingAndTheNextOneIsWhole() throws Exception {
        with(path, store -> {
            try (FullDisk full = new FullDisk(100)) {
                assertThatThrownBy(() -> store.copies().make(TEN.plusSeconds(1)))
                        .isInstanceOf(IOException.class);
            }
            assertThat(Copy.in(path.resolve("copies"))).hasSize(1);
            assertThat(path.resolve("copies/unfinished")).doesNotExist();
            story.arrives();
            Told.save(store, story.facts());
            store.copies().make(TEN.plusSeconds(2));
            assertThat(store.copies().newest()).contains(TEN.plusSeconds(2));
        });
    }

    @Test
    void theCopiesThatAreKeptNoLongerAreDeleted() throws Exception {
        with(path, store -> store.copies().make(TEN.plus(Copy.OLDEST_KEPT).plusSeconds(1)));

        assertThat(Copy.in(path.resolve("copies"))).hasSize(1);
    }

    private Path database() {
        return path.resolve("rinsebell.mv.db");
    }

    private long lastSeq() {
        return story.facts().size();
    }

    /** How many rows each table has. */
    private TreeMap<String, Long> rows() throws Exception {
        TreeMap<String, Long> rows = new TreeMap<>();
        with(
                path,
                store -> store.tables().database().with(handle -> {
                    handle.createQuery("""
                            select table_name
                            from information_schema.tables
                            where table_schema = 'PUBLIC'
                            """)
                            .mapTo(String.class)
                            .forEach(table -> rows.put(
                                    table,
                                    handle.createQuery("select count(*) from \"" + table + "\"")
                                            .mapTo(Long.class)
                                            .one()));
                    return rows;
                }));
        return rows;
    }
}
