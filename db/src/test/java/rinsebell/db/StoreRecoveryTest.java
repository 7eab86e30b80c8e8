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
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.db.codec.PressLines;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalDamaged;
import rinsebell.db.journal.JournalPress;
import rinsebell.db.journal.JournalReader;
import rinsebell.floor.Fact;
import rinsebell.floor.TextId;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;

/** What a start makes of a folder that a kill, a power cut or a broken disk left behind. */
final class StoreRecoveryTest {

    @TempDir
    Path parent;

    private Path path;
    private Story story;
    private TextId label;

    /** A store that was closed in order, with one client who left and one who is here. */
    @BeforeEach
    void aMorning() throws Exception {
        path = parent.resolve("data");
        story = Story.begins();
        Head gone = story.at("09:00").arrivesFine();
        var on = gone.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.REGROWTH));
        story.at("09:30");
        gone.rinses(on);
        gone.leaves();
        label = new TextId(story.arrives().id().value());
        with(path, store -> Told.save(store, story.facts()));
    }

    @Test
    void aKilledProcessLeavesEveryPressThatWasAnswered() throws Exception {
        with(path, store -> {
            story.arrives();
            Told.save(store, story.facts());
            copy(path, parent.resolve("killed"));
        });

        with(parent.resolve("killed"), store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.press("press-" + story.facts().size())).isPresent();
            assertThat(store.texts(List.of(label)).get(label)).isEqualTo(Told.label(label.seq()));
            assertThat(store.lastRebuild()).isEmpty();
        });
    }

    @Test
    void whatTheJournalHasAndTheDatabaseLacksIsApplied() throws Exception {
        story.arrives().leaves();
        journalAlone();

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.press("press-" + story.facts().size())).isPresent();
            assertThat(store.lastRebuild()).isEmpty();
        });
    }

    /** A database that was not forced to disk may come back from a power cut as it was some time before. */
    @Test
    void aDatabaseThatWentBackInTimeIsBroughtForwardWithItsTexts() throws Exception {
        Path file = path.resolve("rinsebell.mv.db");
        byte[] before = Files.readAllBytes(file);
        TextId late = new TextId(story.arrives().id().value());
        Path cut = parent.resolve("cut");
        with(path, store -> {
            Told.save(store, story.facts());
            copy(path, cut);
        });
        Files.write(cut.resolve("rinsebell.mv.db"), before);

        with(cut, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.texts(List.of(late)).get(late)).isEqualTo(Told.label(late.seq()));
        });
    }

    @Test
    void aTextOfAPressThatWasNotSavedGoesToNobodyElse() throws Exception {
        long next = story.facts().size() + 1L;
        Files.writeString(
                path.resolve("waiting-texts.txt"),
                "{\"press\":\"never saved\",\"seq\":%d,\"body\":\"wrong\"}\n{\"press\":\"torn".formatted(next));
        TextId late = new TextId(story.arrives().id().value());
        journalAlone();

        with(path, store -> assertThat(store.texts(List.of(late))).isEmpty());
        assertThat(path.resolve("waiting-texts.txt")).isEmptyFile();
    }

    @Test
    void aDeletedDatabaseIsMadeAgainAndThatIsSaid() throws Exception {
        Files.delete(path.resolve("rinsebell.mv.db"));

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.press("press-1")).isPresent();
            assertThat(store.texts(List.of(label))).isEmpty();
            assertThat(store.lastRebuild()).contains(new Rebuild(TEN, "the database file was missing or empty", null));
        });
        with(path, store -> assertThat(store.lastRebuild()).isPresent());
    }

    @Test
    void anEmptyDatabaseFileIsALostOne() throws Exception {
        Files.write(path.resolve("rinsebell.mv.db"), new byte[0]);

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.lastRebuild()).isPresent();
        });
    }

    @Test
    void aDamagedDatabaseIsSetAsideAndMadeAgain() throws Exception {
        Path file = path.resolve("rinsebell.mv.db");
        byte[] whole = Files.readAllBytes(file);
        List<byte[]> damaged = List.of("this is no database".repeat(1000).getBytes(UTF_8), Arrays.copyOf(whole, 5000));
        for (int at = 0; at < damaged.size(); at++) {
            Files.write(file, damaged.get(at));
            Path kept = path.resolve("set-aside").resolve("rinsebell-" + (at + 1) + ".mv.db");

            with(path, store -> {
                assertThat(store.load()).isEqualTo(story.facts());
                assertThat(store.lastRebuild().orElseThrow().kept()).contains(kept);
                assertThat(store.lastRebuild().orElseThrow().reason()).contains("would not open");
            });
            assertThat(Files.readAllBytes(kept)).isEqualTo(damaged.get(at));
        }
    }

    /** The journal is needed to make another one; while it can't be read, the damaged file is all that there is. */
    @Test
    void aDamagedDatabaseStaysWhereItIsUntilAnotherOneIsWhole() throws Exception {
        Path file = path.resolve("rinsebell.mv.db");
        byte[] damaged = "no database".repeat(1000).getBytes(UTF_8);
        Files.write(file, damaged);
        Path segment = path.resolve("journal/journal-000000000001.txt");
        byte[] sound = Files.readAllBytes(segment);
        byte[] bad = sound.clone();
        bad[10] ^= 1;
        Files.write(segment, bad);

        assertThatThrownBy(() -> with(path, store -> {})).isInstanceOf(JournalDamaged.class);
        assertThat(file).hasBinaryContent(damaged);
        assertThat(path.resolve("rinsebell-new.mv.db")).doesNotExist();
        Files.write(segment, sound);
        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.lastRebuild().orElseThrow().kept().orElseThrow()).hasBinaryContent(damaged);
        });
    }

    /** A name that leads nowhere: the system refuses to make the file, as a full disk or a wrong owner would. */
    @Test
    void aDatabaseThatTheSystemRefusesIsLeftWhereItIs() throws Exception {
        Path file = path.resolve("rinsebell.mv.db");
        Path away = Files.move(file, parent.resolve("away"));
        Files.createDirectory(file);
        Files.writeString(file.resolve("something"), "in it");

        assertThatThrownBy(() -> with(path, store -> {})).isInstanceOf(IOException.class);
        assertThat(file).isDirectory();
        assertThat(path.resolve("set-aside")).doesNotExist();
        Files.delete(file.resolve("something"));
        Files.delete(file);
        Files.move(away, file);
        with(path, store -> assertThat(store.lastRebuild()).isEmpty());
    }

    /** H2 takes what it finds at the beginning of a file for all there is, and begins anew where that is nothing. */
    @Test
    void aDatabaseThatWasCutIsNotReplacedInSilence() throws Exception {
        ClientId client = new ClientId(1);
        with(
                path,
                store -> assertThat(store.clients().add("M. A.", "press-of-client"))
                        .isEqualTo(client));
        Path file = path.resolve("rinsebell.mv.db");
        byte[] whole = Files.readAllBytes(file);
        for (int length : List.of(4096, 8192, 12_288, 40_000, whole.length / 2, whole.length - 4096)) {
            byte[] cut = Arrays.copyOf(whole, length);
            Files.write(file, cut);

            with(path, store -> {
                assertThat(store.load()).as("cut at byte %d", length).isEqualTo(story.facts());
                if (store.lastRebuild().isEmpty()) {
                    assertThat(store.clients().card(client))
                            .as("cut at byte %d", length)
                            .isPresent();
                } else {
                    assertThat(store.lastRebuild().orElseThrow().kept().orElseThrow())
                            .hasBinaryContent(cut);
                }
            });
        }
        assertThat(path.resolve("set-aside/rinsebell-4.mv.db"))
                .as("of those cut most")
                .exists();
    }

    @Test
    void aRebuildThatWasBrokenOffBeginsAgain() throws Exception {
        Files.move(path.resolve("rinsebell.mv.db"), path.resolve("rinsebell-new.mv.db"));

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.lastRebuild()).isPresent();
        });
        assertThat(path.resolve("rinsebell-new.mv.db")).doesNotExist();
    }

    @Test
    void aDatabaseThatHoldsLessThanItSaysIsMadeAgain() throws Exception {
        with(
                path,
                store -> store.tables()
                        .database()
                        .jdbi()
                        .useHandle(handle -> handle.execute("delete from fact where seq = 3")));

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.lastRebuild().orElseThrow().reason())
                    .contains("says")
                    .contains("and holds");
        });
    }

    @Test
    void aDatabaseThatFailsDoesNotKeepAPressFromCounting() throws Exception {
        TextId late = new TextId(story.arrives().id().value());
        with(path, store -> {
            hide(store);
            Told.save(store, story.facts());
            assertThat(store.press("press-" + late.seq())).isPresent();
            assertThat(store.press("press-1")).isPresent();
            assertThat(store.texts(List.of(late, label))).hasSize(2);

            show(store);
            story.arrives();
            Told.save(store, story.facts());
            assertThat(store.load()).isEqualTo(story.facts());
        });
        with(path, store -> assertThat(store.load()).isEqualTo(story.facts()));
    }

    @Test
    void whatTheDatabaseNeverTookIsThereAtTheNextStart() throws Exception {
        TextId late = new TextId(story.arrives().id().value());
        with(path, store -> {
            hide(store);
            Told.save(store, story.facts());
            show(store);
        });

        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.texts(List.of(late)).get(late)).isEqualTo(Told.label(late.seq()));
        });
    }

    @Test
    void aJournalThatLostItsEndIsNotTakenForWhole() throws Exception {
        Path file = path.resolve("journal/journal-000000000001.txt");
        List<String> lines = Files.readAllLines(file);
        Files.writeString(file, String.join("\n", lines.subList(0, 5)) + "\n");

        assertThatThrownBy(() -> with(path, store -> {}))
                .isInstanceOf(StoreBroken.class)
                .hasMessageContaining("the database holds " + lines.size() + " facts")
                .hasMessageContaining("the journal ends with fact 5");
    }

    /** The database knows better, so the end was not of a batch that nobody was answered. */
    @Test
    void aJournalThatEndsBeforeTheDatabaseIsNotCut() throws Exception {
        Path file = path.resolve("journal/journal-000000000001.txt");
        byte[] whole = Files.readAllBytes(file);
        byte[] torn = Arrays.copyOf(whole, whole.length - 20);
        Files.write(file, torn);

        assertThatThrownBy(() -> with(path, store -> {})).isInstanceOf(StoreBroken.class);
        assertThat(Files.readAllBytes(file)).isEqualTo(torn);
    }

    @Test
    void aJournalWithOtherLineEndsStopsTheStartWithADatabaseAndWithout() throws Exception {
        Path file = path.resolve("journal/journal-000000000001.txt");
        byte[] other = Files.readString(file).replace("\n", "\r\n").getBytes(UTF_8);
        Files.write(file, other);
        assertThatThrownBy(() -> with(path, store -> {})).isInstanceOf(JournalDamaged.class);

        Files.delete(path.resolve("rinsebell.mv.db"));
        assertThatThrownBy(() -> with(path, store -> {})).isInstanceOf(JournalDamaged.class);
        assertThat(Files.readAllBytes(file)).isEqualTo(other);
    }

    @Test
    void aMissingJournalIsNotTakenForANewOne() throws Exception {
        Files.delete(path.resolve("journal/journal-000000000001.txt"));

        assertThatThrownBy(() -> with(path, store -> {})).isInstanceOf(StoreBroken.class);
    }

    @Test
    void aJournalOfAnotherSalonIsFound() throws Exception {
        Path other = parent.resolve("other");
        Story theirs = Story.begins();
        while (theirs.facts().size() < story.facts().size() + 2) {
            theirs.arrives();
        }
        with(other, store -> Told.save(store, theirs.facts()));
        Files.copy(
                other.resolve("journal/journal-000000000001.txt"),
                path.resolve("journal/journal-000000000001.txt"),
                StandardCopyOption.REPLACE_EXISTING);

        assertThatThrownBy(() -> with(path, store -> {}))
                .isInstanceOf(StoreBroken.class)
                .hasMessageContaining("do not belong together");
    }

    @Test
    void aDamagedJournalIsNamedThoughTheDatabaseIsFine() throws Exception {
        Path file = path.resolve("journal/journal-000000000001.txt");
        byte[] bytes = Files.readAllBytes(file);
        bytes[200] ^= 1;
        Files.write(file, bytes);

        assertThatThrownBy(() -> with(path, store -> {}))
                .isInstanceOf(JournalDamaged.class)
                .hasMessageContaining("journal-000000000001.txt, line 1");
    }

    @Test
    void aFactOfALaterVersionStopsTheStart() throws Exception {
        try (Journal journal = Journal.open(path.resolve("journal"), JournalReader.NONE)) {
            String line = PressLines.of(Told.press(story.facts().get(0)))
                    .get(0)
                    .replace("\"seq\":1", "\"seq\":" + (story.facts().size() + 1))
                    .replace("house-set", "house-sold");
            journal.append(List.of(new JournalPress(List.of(line))));
        }

        assertThatThrownBy(() -> with(path, store -> {}))
                .isInstanceOf(StoreBroken.class)
                .hasMessageContaining("house-sold");
    }

    @Test
    void aDatabaseOfALaterVersionStopsTheStartAndIsLeftAsItIs() throws Exception {
        with(path, store -> store.tables().database().jdbi().useHandle(handle -> handle.execute("""
                insert into "flyway_schema_history"
                    ("installed_rank", "version", "description", "type", "script", "installed_by", "execution_time", "success")
                values (99, '99', 'later', 'SQL', 'V99__later.sql', 'sa', 1, true)
                """)));

        assertThatThrownBy(() -> with(path, store -> {}))
                .isInstanceOf(StoreBroken.class)
                .hasMessageContaining("99");
        assertThat(path.resolve("set-aside")).doesNotExist();
    }

    /** Facts, presses, rows: all but texts and client records come back from the journal alone. */
    @Test
    void aRebuiltDatabaseHoldsTheSameRows() throws Exception {
        List<String> before = new ArrayList<>();
        with(path, store -> before.addAll(rows(store)));
        Files.delete(path.resolve("rinsebell.mv.db"));

        with(path, store -> assertThat(rows(store)).isEqualTo(before).hasSizeGreaterThan(20));
    }

    private static List<String> rows(SalonStore store) {
        List<String> rows = new ArrayList<>();
        for (String table : List.of("press", "fact", "visit", "bowl", "portion", "application", "journal_mark")) {
            store.tables()
                    .database()
                    .jdbi()
                    .useHandle(handle -> handle.createQuery("select * from " + table + " order by 1, 2")
                            .mapToMap()
                            .forEach(row -> rows.add(table + " " + new TreeMap<>(row))));
        }
        return rows;
    }

    /** Takes a table out of the database's reach, as a broken disk might. */
    private static void hide(SalonStore store) {
        store.tables()
                .database()
                .jdbi()
                .useHandle(handle -> handle.execute("alter table journal_mark rename to hidden"));
    }

    private static void show(SalonStore store) {
        store.tables()
                .database()
                .jdbi()
                .useHandle(handle -> handle.execute("alter table hidden rename to journal_mark"));
    }

    /** The process was killed between the journal and the database. */
    private void journalAlone() throws Exception {
        try (Journal journal = Journal.open(path.resolve("journal"), JournalReader.NONE)) {
            int from = Math.toIntExact(journal.end().lines());
            for (Fact fact : story.facts().subList(from, story.facts().size())) {
                journal.append(List.of(new JournalPress(PressLines.of(Told.press(fact)))));
            }
        }
    }

    /** What stands on disk at this moment, as after kill -9. */
    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file)));
            }
        }
    }
}
