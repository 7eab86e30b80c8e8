package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.DATE;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Where.onScalp;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.TextId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.client.EarlierBowl;
import rinsebell.floor.client.EarlierVisit;
import rinsebell.floor.client.KnownClient;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.SkinTest;
import rinsebell.floor.visit.Gate.YesNo;
import rinsebell.floor.visit.StayEvent;

final class ClientsTest {

    @TempDir
    Path path;

    @Test
    void theSamePressBeginsOneRecord() throws Exception {
        with(path, store -> {
            ClientId first = store.clients().add("A", "the-same-press");
            assertThat(store.clients().add("A", "the-same-press")).isEqualTo(first);
            assertThat(store.clients().add("A", "another-press")).isNotEqualTo(first);
            assertThat(store.clients().search("", 9)).hasSize(2);
        });
    }

    @Test
    void clientsAreFoundByAnyPartOfTheirLabel() throws Exception {
        with(path, store -> {
            ClientId one = store.clients().add("Ödön K.", "begins-1");
            ClientId two = store.clients().add("Odile_%", "begins-2");

            assertThat(found(store, "öd")).containsExactly(one);
            assertThat(found(store, "OD")).containsExactly(two);
            assertThat(found(store, "_%")).containsExactly(two);
            assertThat(found(store, "")).containsExactlyInAnyOrder(one, two);
            assertThat(found(store, "x")).isEmpty();
            assertThat(store.clients().search("", 1)).hasSize(1);
        });
    }

    @Test
    void whoCameLastStandsFirst() throws Exception {
        with(path, store -> {
            ClientId never = store.clients().add("A", "begins-3");
            ClientId early = store.clients().add("B", "begins-4");
            ClientId late = store.clients().add("C", "begins-5");
            Story story = Story.begins();
            story.at("09:00").arrives(early);
            story.at("10:00").arrives(late);
            Told.save(store, story.facts());

            assertThat(found(store, "")).containsExactly(late, early, never);
            assertThat(store.clients().search("b", 9).get(0).last()).contains(at("09:00"));
        });
    }

    @Test
    void aCardShowsWhatEarlierVisitsLeft() throws Exception {
        with(path, store -> {
            ClientId client = store.clients().add("Amara", "begins-6");
            Story story = Story.begins();
            Head head = story.at("09:00").arrives(client);
            head.answers(Gates.FINE);
            var bowl = story.mixes(g(60, MILD_CREAM), g(60, DEV20));
            var on = head.puts(bowl, onScalp(Area.REGROWTH));
            head.complains(Complaint.Grade.TINGLING);
            story.at("09:40");
            head.rinses(on);
            head.leaves();
            story.arrives(client);
            Told.save(store, story.facts());

            ClientCard card = store.clients().card(client).orElseThrow();
            assertThat(card.label()).isEqualTo("Amara");
            assertThat(card.visits()).hasSize(1);
            EarlierVisit visit = card.visits().get(0);
            assertThat(visit.gate()).isEqualTo(Gates.FINE);
            assertThat(visit.complaints()).containsExactly(Complaint.Grade.TINGLING);
            EarlierBowl earlier = visit.bowls().get(0);
            assertThat(earlier.reason()).isEqualTo(BowlReason.FIRST);
            assertThat(earlier.portions())
                    .containsExactly(
                            new EarlierBowl.Part(MILD_CREAM.name(), Grams.of(60)),
                            new EarlierBowl.Part(DEV20.name(), Grams.of(60)));
            assertThat(earlier.uses().get(0).area()).isEqualTo(Area.REGROWTH);
            assertThat(earlier.uses().get(0).time()).contains(minutes(40));
        });
    }

    @Test
    void aVisitLinkedAfterItsEndIsOnTheCard() throws Exception {
        with(path, store -> {
            ClientId client = store.clients().add("Amara", "begins-7");
            Story story = Story.begins();
            Head head = story.at("09:00").arrives();
            head.leaves();
            Told.save(store, story.facts());
            assertThat(store.clients().card(client).orElseThrow().visits()).isEmpty();
            head.tells(new StayEvent.ClientLinked(client));
            Told.save(store, story.facts());

            assertThat(store.clients().card(client).orElseThrow().visits())
                    .extracting(EarlierVisit::id)
                    .containsExactly(head.id());
        });
    }

    @Test
    void theNewestSkinTestAndAnyReactionNeedNotBeAskedAgain() throws Exception {
        with(path, store -> {
            ClientId client = store.clients().add("Amara", "begins-8");
            assertThat(known(store, client)).isEqualTo(Gate.UNANSWERED);

            store.clients().note(client, new ClientNote(ClientNote.Kind.SKIN_TEST_FINE, DATE.minusDays(2)));
            store.clients().note(client, new ClientNote(ClientNote.Kind.SKIN_TEST_FINE, DATE.minusDays(30)));
            assertThat(known(store, client).skinTest())
                    .isEqualTo(new SkinTest(SkinTest.Result.NO_REACTION, DATE.minusDays(2)));
            assertThat(known(store, client).earlierReaction()).isNull();

            store.clients().note(client, new ClientNote(ClientNote.Kind.REACTION, DATE.minusDays(40)));
            assertThat(known(store, client).earlierReaction()).isEqualTo(YesNo.YES);
        });
    }

    @Test
    void aReactionToldAtAVisitIsKnownAtTheNext() throws Exception {
        with(path, store -> {
            ClientId client = store.clients().add("Amara", "begins-9");
            Story story = Story.begins();
            Head head = story.at("09:00").arrives(client);
            head.answers(Gates.fineBut(new SkinTest(SkinTest.Result.REACTED, DATE.minusDays(3))));
            head.leaves();
            Told.save(store, story.facts());

            assertThat(known(store, client).skinTest())
                    .isEqualTo(new SkinTest(SkinTest.Result.REACTED, DATE.minusDays(3)));
            assertThat(known(store, client).earlierReaction()).isEqualTo(YesNo.YES);
        });
    }

    @Test
    void nothingIsNotedOfNobody() throws Exception {
        with(path, store -> {
            assertThat(store.clients().note(new ClientId(7), new ClientNote(ClientNote.Kind.REACTION, DATE)))
                    .isFalse();
            assertThat(store.clients().card(new ClientId(7))).isEmpty();
        });
    }

    @Test
    void aNoteTwiceIsOneNote() throws Exception {
        with(path, store -> {
            ClientId client = store.clients().add("Amara", "begins-10");
            ClientNote note = new ClientNote(ClientNote.Kind.REACTION, DATE);
            assertThat(store.clients().note(client, note)).isTrue();
            assertThat(store.clients().note(client, note)).isTrue();

            assertThat(store.clients().card(client).orElseThrow().notes()).containsExactly(note);
        });
    }

    /** Another person under an old number would inherit the old one's visits, which the facts still name. */
    @Test
    void aNumberIsNeverGivenTwiceNotEvenAfterTheDatabaseWasLost() throws Exception {
        ClientId[] old = new ClientId[1];
        with(path, store -> {
            store.clients().add("A", "begins-11");
            old[0] = store.clients().add("B", "begins-12");
            Story story = Story.begins();
            story.arrives(old[0]);
            Told.save(store, story.facts());
        });
        Files.delete(path.resolve("rinsebell.mv.db"));

        with(
                path,
                store -> assertThat(store.clients().add("C", "begins-13").value())
                        .isGreaterThan(old[0].value()));
    }

    private static Gate known(SalonStore store, ClientId client) {
        return store.clients().card(client).orElseThrow().known();
    }

    private static List<ClientId> found(SalonStore store, String letters) {
        return store.clients().search(letters, 9).stream().map(KnownClient::id).toList();
    }

    /** Reports of a day that is over are reckoned from these facts. */
    @Test
    void whatADayIsToldFromIsTheSameAfterAnErasure() throws Exception {
        with(path, store -> {
            ClientId client = store.clients().add("Amara", "begins-14");
            Story story = Story.begins();
            Head head = story.at("09:00").arrives(client);
            var on = head.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.REGROWTH));
            story.at("09:40");
            head.rinses(on);
            head.leaves();
            Told.save(store, story.facts());
            var day = store.facts(DATE);
            var days = store.facts(DATE, DATE);
            assertThat(day).contains(story.facts().get(story.facts().size() - 1));
            store.clients().erase(client, Set.of());

            assertThat(store.facts(DATE)).isEqualTo(day);
            assertThat(store.facts(DATE, DATE)).isEqualTo(days);
        });
    }

    /** Texts wait in a file of their own for the database to be forced; a killed process leaves that file behind. */
    @Test
    void whatWasErasedDoesNotComeBackAfterAKill(@TempDir Path parent) throws Exception {
        Path path = parent.resolve("data");
        Path killed = parent.resolve("killed");
        List<TextId> label = new ArrayList<>();
        with(path, store -> {
            ClientId client = store.clients().add("M. A.", "press-client");
            Story told = Story.begins();
            label.add(new TextId(told.arrives(client).id().value()));
            Told.save(store, told.facts());
            assertThat(store.texts(label)).isNotEmpty();
            assertThat(store.clients().erase(client, Set.of())).contains(new Clients.Erased(true, Set.copyOf(label)));
            assertThat(store.clients().erase(client, Set.of())).contains(new Clients.Erased(false, Set.of()));
            assertThat(store.clients().erasings()).isEqualTo(1);
            assertThat(store.clients().erase(new ClientId(client.value() + 1), Set.of()))
                    .isEmpty();
            try (Stream<Path> files = Files.walk(path)) {
                for (Path file : files.toList()) {
                    Files.copy(file, killed.resolve(path.relativize(file)));
                }
            }
        });

        with(killed, store -> {
            assertThat(store.texts(label)).isEmpty();
            assertThat(store.clients().search("", 5)).isEmpty();
            assertThat(store.clients().add("M. A.", "press-later")).isEqualTo(new ClientId(2));
        });
    }
}
