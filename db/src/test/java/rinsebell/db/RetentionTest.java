package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.DATE;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Saturday.at;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.TextId;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.report.Sounded;
import rinsebell.floor.report.Turned;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ClientId;

/** What is past its time, and what a wrong clock can do about it. */
final class RetentionTest {

    private static final Duration DAY = Duration.ofDays(1);

    @TempDir
    Path path;

    private final Story story = Story.begins();

    private static TextId label(Head head) {
        return new TextId(head.id().value());
    }

    @Test
    void textsOfVisitsWithoutARecordGoAndThoseOfARecordStay() throws Exception {
        with(path, store -> {
            ClientId client = store.clients().add("Amara", "press-a");
            Head nobody = story.at("09:00").arrives();
            Head known = story.arrives(client);
            Head gone = story.arrives(new ClientId(77));
            Head here = story.arrives();
            nobody.leaves();
            known.leaves();
            gone.leaves();
            Told.save(store, story.facts());
            Retention retention = store.retention();

            assertThat(retention.eraseTextsBefore(at("09:00")))
                    .as("on the dot it is not past")
                    .isEmpty();
            assertThat(retention.eraseTextsBefore(at("09:01"))).containsExactlyInAnyOrder(label(nobody), label(gone));
            assertThat(store.texts(List.of(label(nobody), label(known), label(here))))
                    .containsOnlyKeys(label(known), label(here));
            assertThat(store.clients().erasings()).isEqualTo(1);
            assertThat(retention.eraseTextsBefore(at("09:01"))).isEmpty();
            assertThat(store.clients().erasings())
                    .as("nothing was there to be erased")
                    .isEqualTo(1);
            assertThat(store.compactions().isDue()).isTrue();
        });
    }

    @Test
    void noCopyBringsBackWhatRetentionErased() throws Exception {
        Head nobody = story.at("09:00").arrives();
        nobody.leaves();
        with(path, store -> {
            Told.save(store, story.facts());
            store.copies().make(TEN);
            store.retention().eraseTextsBefore(TEN);
        });
        Files.delete(path.resolve("rinsebell.mv.db"));

        with(path, store -> {
            assertThat(store.lastRebuild().orElseThrow().copied()).isEqualTo(TEN);
            assertThat(store.texts(List.of(label(nobody)))).isEmpty();
        });
    }

    @Test
    void aRecordCountsFromTheLastThatIsKnownOfIt() throws Exception {
        with(path, store -> {
            ClientId never = store.clients().add("never came", "press-1");
            ClientId noted = store.clients().add("tested", "press-2");
            ClientId came = store.clients().add("came", "press-3");
            ClientId here = store.clients().add("is here", "press-4");
            store.clients().note(noted, new ClientNote(ClientNote.Kind.SKIN_TEST_FINE, DATE.plusDays(10)));
            story.at("09:00").arrives(came).leaves();
            story.arrives(here);
            Told.save(store, story.facts());
            Retention retention = store.retention();
            Instant met = at("08:00");

            assertThat(retention.untouchedSince(met, met)).as("met only now").isEmpty();
            assertThat(retention.untouchedSince(at("08:01"), TEN)).containsExactly(never);
            assertThat(retention.untouchedSince(at("09:00"), TEN)).containsExactly(never);
            assertThat(retention.untouchedSince(at("09:01"), TEN)).containsExactly(never, came);
            assertThat(retention.untouchedSince(TEN.plus(DAY.multipliedBy(12)), TEN))
                    .containsExactly(never, noted, came);
        });
    }

    @Test
    void theTimeThatIsReckonedWithGoesOnByAWeekAtMost() throws Exception {
        with(path, store -> {
            Retention retention = store.retention();
            assertThat(retention.until(TEN)).as("a salon without facts").isEmpty();
            Told.save(store, story.facts());
            Instant first = story.facts().get(0).recorded();
            Instant years = TEN.plus(DAY.multipliedBy(4000));

            assertThat(retention.until(years)).contains(first.plus(Retention.STEP));
            assertThat(retention.until(first.plus(DAY))).contains(first.plus(DAY));
            retention.note(new Retention.Run(years, first.plus(Retention.STEP), 1, 2, 3, 4));
            assertThat(retention.until(years.plus(DAY))).contains(first.plus(Retention.STEP.multipliedBy(2)));
            assertThat(retention.until(first.plus(DAY)))
                    .as("the clock was put right")
                    .contains(first.plus(DAY));
            Retention.Run later = new Retention.Run(first.plus(DAY), first.plus(DAY), 0, 0, 0, 0);
            retention.note(later);
            assertThat(retention.last(1))
                    .as("the last that was written, whatever the clock said")
                    .containsExactly(later);
            assertThat(retention.last(9)).hasSize(2);
        });
    }

    @Test
    void whatSoundedIsForgottenBeforeAnInstant() throws Exception {
        with(path, store -> {
            var turn = new Turned(new BellKey(BellKind.RINSE, 7, 7), TEN);
            store.soundings()
                    .add(Set.of(
                            new Sounded(turn, "one", "wall", TEN, TEN),
                            new Sounded(turn, "two", "wall", TEN.plusSeconds(1), TEN)));
            assertThat(store.retention().forgetSoundingsBefore(TEN.plusSeconds(1)))
                    .isEqualTo(1);
            assertThat(store.soundings().between(Instant.EPOCH, TEN.plus(DAY))).hasSize(1);
        });
    }

    @Test
    void whoLookedIsForgottenBeforeAnInstantAndTheRestStaysOneChain() throws Exception {
        with(path, store -> {
            Told.save(store, story.facts());
            store.trail().keep(List.of(look(TEN), look(TEN.plusSeconds(1)), look(TEN.plusSeconds(2))));
            assertThat(store.retention().forgetTrailBefore(TEN.plusSeconds(1))).isEqualTo(1);
            assertThat(store.trail().between(Instant.EPOCH, TEN.plus(DAY))).hasSize(2);
            store.trail().keep(List.of(look(TEN.plusSeconds(3))));
            assertThat(store.retention().forgetTrailBefore(TEN.plus(DAY)))
                    .as("the last stays, since the next hangs on it")
                    .isEqualTo(2);
            store.trail().keep(List.of(look(TEN.plusSeconds(4))));
        });
        try (DataFolder folder = DataFolder.open(path)) {
            assertThat(Verifying.of(folder).faults()).isEmpty();
        }
    }

    private static Trail.Step look(Instant at) {
        return new Trail.Step(at, "own", null, "HISTORY", "GET /clients/{id}", 7L, 200);
    }

    @Test
    void theLogOfItIsInTheCopies() throws Exception {
        Retention.Run run = new Retention.Run(TEN, TEN, 4, 5, 6, 7);
        with(path, store -> {
            Told.save(store, story.facts());
            store.retention().note(run);
            store.copies().make(TEN);
        });
        Files.delete(path.resolve("rinsebell.mv.db"));

        with(path, store -> assertThat(store.retention().last(5)).containsExactly(run));
    }

    /** Databases that would not open are kept as long as copies, counted from when they were set aside. */
    @Test
    void whatWasSetAsideIsKeptAsLongAsACopy() throws Exception {
        with(path, store -> Told.save(store, story.facts()));
        Path database = path.resolve("rinsebell.mv.db");
        Files.write(database, new byte[5000]);
        Files.setLastModifiedTime(database, FileTime.from(TEN.minus(DAY.multipliedBy(99))));
        Path aside = path.resolve("set-aside/rinsebell-1.mv.db");

        with(path, store -> {
            assertThat(aside).exists();
            store.copies().make(TEN.plus(Copies.KEPT));
            assertThat(aside).as("set aside at ten").exists();
            store.copies().make(TEN.plus(Copies.KEPT).plusSeconds(1));
            assertThat(aside).doesNotExist();
        });
    }
}
