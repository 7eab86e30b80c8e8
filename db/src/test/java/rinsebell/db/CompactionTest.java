package rinsebell.db;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.TEN;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.db.journal.Journal;
import rinsebell.floor.Ledger.Entry;
import rinsebell.floor.TextId;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ClientId;

/** What is erased is in no byte of the folder any more, and nothing else is lost on the way. */
final class CompactionTest {

    private static final String ERASED = "Quillane Odvar";
    private static final String STAYS = "Wrenna Oxfold";

    @TempDir
    Path parent;

    private Path path;
    private final Story story = Story.begins();
    private final ClientId erased = new ClientId(1);
    private final ClientId stays = new ClientId(2);
    private TextId label = new TextId(0);

    @BeforeEach
    void twoClients() throws Exception {
        path = parent.resolve("data");
        with(path, store -> {
            assertThat(store.clients().add(ERASED, "press-of-one")).isEqualTo(erased);
            assertThat(store.clients().add(STAYS, "press-of-other")).isEqualTo(stays);
            store.clients().note(erased, new ClientNote(ClientNote.Kind.REACTION, LocalDate.of(2026, 11, 1)));
            arrives(store, erased, ERASED);
            label = new TextId(store.lastSeq());
            arrives(store, stays, STAYS);
        });
    }

    private void arrives(SalonStore store, ClientId client, String as) throws Exception {
        story.arrives(client);
        long seq = store.lastSeq() + 1;
        for (var fact : story.facts()
                .subList(Math.toIntExact(store.lastSeq()), story.facts().size())) {
            Entry press = Told.press(fact);
            store.append(List.of(
                    press.texts().isEmpty()
                            ? press
                            : new Entry(
                                    press.id(),
                                    press.device(),
                                    press.payloadHash(),
                                    press.outcome(),
                                    press.facts(),
                                    Map.of(fact.seq(), as))));
        }
        assertThat(store.lastSeq()).isGreaterThanOrEqualTo(seq);
    }

    /** GDPR, Art. 17 (1): erased. Encodings in which a Java program could have written it. */
    @Test
    void whatWasErasedIsInNoByteOfTheFolder() throws Exception {
        assertThat(filesWith(ERASED)).contains("rinsebell.mv.db");
        with(path, store -> {
            assertThat(store.compactions().isDue()).isFalse();
            store.clients().erase(erased, Set.of());
            assertThat(store.compactions().isDue()).isTrue();
            assertThat(filesWith(ERASED))
                    .as("tables alone do not forget, or this test looks for nothing")
                    .contains("rinsebell.mv.db");
            store.compactions().compact(TEN);
            assertThat(filesWith(ERASED)).as("while it is open").isEmpty();
            assertThat(store.compactions().isDue()).isFalse();
            assertThat(store.compactions().last()).contains(TEN);
            assertThat(store.clients().card(stays).orElseThrow().label()).isEqualTo(STAYS);
            assertThat(store.load()).isEqualTo(story.facts());
        });
        assertThat(filesWith(ERASED)).isEmpty();
        assertThat(filesWith(STAYS)).containsExactly("rinsebell.mv.db");
        with(path, store -> {
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.lastRebuild()).isEmpty();
            assertThat(store.compactions().isDue()).isFalse();
            assertThat(store.texts(List.of(label))).isEmpty();
        });
        assertThat(Journal.verify(path.resolve("journal")).end().lines())
                .as("the chain goes through")
                .isEqualTo(story.facts().size());
    }

    /** A press that comes while the file is being worked on counts, and one that came before is known. */
    @Test
    @Timeout(8)
    void pressesGoOnMeanwhile() throws Exception {
        with(path, store -> {
            store.clients().erase(erased, Set.of());
            Database database = store.tables().database();
            var shut = new CountDownLatch(1);
            var pressed = new CountDownLatch(1);
            var worker = new Thread(() -> shutFor(database, shut, pressed));
            worker.start();
            shut.await();
            long before = store.lastSeq();
            story.arrives();
            Told.save(store, story.facts());
            assertThat(store.lastSeq()).isEqualTo(before + 1);
            assertThat(store.press("press-" + store.lastSeq())).isPresent();
            assertThatThrownBy(() -> store.clients().erase(stays, Set.of())).isInstanceOf(DatabaseAway.class);
            pressed.countDown();
            worker.join();
            story.arrives();
            Told.save(store, story.facts());
            assertThat(store.load()).isEqualTo(story.facts());
        });
    }

    private static void shutFor(Database database, CountDownLatch shut, CountDownLatch pressed) {
        try {
            database.whileShut(name -> {
                shut.countDown();
                try {
                    pressed.await();
                } catch (InterruptedException e) {
                    throw new IOException(e);
                }
            });
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void anIdThatNoPressHasIsKnownWithoutTheTables() throws Exception {
        with(path, store -> {
            store.append(List.of(Told.refusal("refused-long-ago")));
            PressIds ids = store.tables().database().with(PressIds::read);
            assertThat(ids.lack("refused-long-ago")).isFalse();
            assertThat(ids.lack("press-1")).isFalse();
            assertThat(ids.lack("never pressed")).isTrue();
            assertThat(PressIds.UNKNOWN.lack("never pressed")).isFalse();
        });
    }

    /** What is on disk at any moment of it is the folder as it was, or as it is then, and never a part of it. */
    @Test
    void aKillInTheMiddleLosesNothing() throws Exception {
        with(path, store -> store.clients().erase(erased, Set.of()));
        Path whole = path.resolve("rinsebell.mv.db");
        byte[] bytes = Files.readAllBytes(whole);
        for (int length : List.of(0, 4096, bytes.length / 2, bytes.length)) {
            Files.write(path.resolve("rinsebell-new.mv.db"), java.util.Arrays.copyOf(bytes, length));
            Files.write(path.resolve("rinsebell-new.mv.db.tempFile"), java.util.Arrays.copyOf(bytes, length / 2));

            with(path, store -> {
                assertThat(store.lastRebuild()).isEmpty();
                assertThat(store.clients().card(stays)).isPresent();
                assertThat(store.compactions().isDue()).isTrue();
            });
            assertThat(path.resolve("rinsebell-new.mv.db")).doesNotExist();
            assertThat(path.resolve("rinsebell-new.mv.db.tempFile")).doesNotExist();
        }
    }

    @Test
    void aFullDiskLeavesTheFileAsItWas() throws Exception {
        with(path, store -> {
            store.clients().erase(erased, Set.of());
            try (FullDisk full = new FullDisk(5_000)) {
                assertThatThrownBy(() -> store.compactions().compact(TEN)).isInstanceOf(IOException.class);
            }
            assertThat(store.clients().card(stays)).isPresent();
            assertThat(store.compactions().isDue()).isTrue();
            story.arrives();
            Told.save(store, story.facts());
            store.compactions().compact(TEN);
            assertThat(store.load()).isEqualTo(story.facts());
        });
        assertThat(filesWith(ERASED)).isEmpty();
    }

    /** The files of the folder that hold a text, in any encoding. */
    private List<String> filesWith(String text) throws Exception {
        try (Stream<Path> files = Files.walk(path)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> holds(file, text))
                    .map(file -> path.relativize(file).toString())
                    .toList();
        }
    }

    private static boolean holds(Path file, String text) {
        try {
            String bytes = new String(Files.readAllBytes(file), ISO_8859_1);
            return Stream.of(UTF_8, UTF_16LE, UTF_16BE, ISO_8859_1)
                    .map(charset -> as(text, charset))
                    .anyMatch(bytes::contains);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String as(String text, Charset charset) {
        return new String(text.getBytes(charset), ISO_8859_1);
    }
}
