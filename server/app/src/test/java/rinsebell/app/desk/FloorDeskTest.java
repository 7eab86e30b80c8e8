package rinsebell.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.TEN;

import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import rinsebell.db.DatabaseAway;
import rinsebell.floor.Asked;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.EndDay;
import rinsebell.floor.command.Report;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.StayEvent;

class FloorDeskTest extends DeskAtWork {

    @Test
    void anAcceptedPressIsOnDiskThenShownThenAnswered() throws Exception {
        ledger.hold();
        CompletableFuture<Answer> answer = desk.press(press("p1", breakOf(story.stylist())));
        ledger.awaitForce();
        assertThat(answer).isNotDone();
        assertThat(desk.snapshot().floor().day().onBreak()).isEmpty();
        assertThat(published).isEmpty();
        ledger.letGo();
        Answer.Decided decided = (Answer.Decided) got(answer);
        assertThat(decided.outcome().accepted()).isTrue();
        assertThat(decided.floor().day().onBreak()).containsExactly(story.stylist());
        assertThat(desk.snapshot().floor()).isEqualTo(decided.floor());
        assertThat(published).hasSize(1);
        assertThat(ledger.facts()).hasSize(1);
    }

    @Test
    void pressesThatComeTogetherShareOneForceAndSeeEachOther() throws Exception {
        ledger.hold();
        CompletableFuture<Answer> first = desk.press(press("p0", breakOf(story.stylist())));
        ledger.awaitForce();
        List<CompletableFuture<Answer>> waiting = new ArrayList<>();
        for (int i = 1; i <= 5; i++) {
            waiting.add(desk.press(press("p" + i, moved(head.id(), Place.chair(i)))));
        }
        ledger.letGo();
        got(first);
        for (CompletableFuture<Answer> answer : waiting) {
            assertThat(((Answer.Decided) got(answer)).outcome().accepted()).isTrue();
        }
        assertThat(ledger.batches()).containsExactly(1, 5);
        assertThat(published).hasSize(2);
        assertThat(desk.snapshot().floor().visit(head.id()).orElseThrow().place())
                .isEqualTo(Place.chair(5));
        assertThat(ledger.facts()).extracting(fact -> fact.seq()).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void theSamePressAgainIsAnsweredTheSameAndCountsOnce() throws Exception {
        Press press = press("p1", mix());
        Outcome first = ((Answer.Decided) got(desk.press(press))).outcome();
        Outcome again = ((Answer.Decided) got(desk.press(press))).outcome();
        assertThat(again).isEqualTo(first);
        assertThat(ledger.facts()).hasSize(1);
        assertThat(ledger.entries()).hasSize(1);
    }

    @Test
    void whatWasAnsweredCanBeAskedForWhenItsFormMeansNothingAnyMore() throws Exception {
        Press press = press("p1", mix());
        Outcome first = ((Answer.Decided) got(desk.press(press))).outcome();
        assertThat(desk.answered("p1", press.payloadHash()))
                .contains(new Answer.Decided(first, desk.snapshot().floor()));
        assertThat(desk.answered("p1", "another hash")).contains(new Answer.OtherPress());
        assertThat(desk.answered("p2", press.payloadHash())).isEmpty();
    }

    @Test
    void theSamePressTwiceInOneBatchCountsOnce() throws Exception {
        ledger.hold();
        CompletableFuture<Answer> blocking = desk.press(press("p0", breakOf(story.stylist())));
        ledger.awaitForce();
        CompletableFuture<Answer> one = desk.press(press("p1", mix()));
        CompletableFuture<Answer> two = desk.press(press("p1", mix()));
        ledger.letGo();
        got(blocking);
        assertThat(((Answer.Decided) got(one)).outcome()).isEqualTo(((Answer.Decided) got(two)).outcome());
        assertThat(ledger.facts()).hasSize(2);
    }

    @Test
    void anotherPressUnderTheSameIdIsTold() throws Exception {
        got(desk.press(press("p1", mix())));
        Press other = new Press("p1", "tablet", "another hash", mix(), Asked.at(TEN));
        assertThat(got(desk.press(other))).isEqualTo(new Answer.OtherPress());
        assertThat(ledger.facts()).hasSize(1);
    }

    @Test
    void aRefusalIsKeptToo() throws Exception {
        Press press = press("p1", moved(head.id(), Place.chair(150)));
        Outcome first = ((Answer.Decided) got(desk.press(press))).outcome();
        assertThat(first.accepted()).isFalse();
        assertThat(first.reasons()).extracting(Outcome.Said::code).containsExactly("NO_SUCH_PLACE");
        assertThat(first.canBeFact()).isFalse();
        assertThat(((Answer.Decided) got(desk.press(press))).outcome()).isEqualTo(first);
        assertThat(ledger.entries()).hasSize(1);
        assertThat(published).isEmpty();
    }

    /** The command is sound; what fails is putting the refusal into words. */
    @Test
    void aBugInOnePressLeavesTheOthersAlone() throws Exception {
        FloorDesk speechless = new FloorDesk(
                Snapshot.of(story.floor(), Map.of()),
                new FloorDesk.Tools(
                        ledger,
                        new PressMemory(id -> Optional.empty()),
                        (reason, on, texts) -> {
                            throw new IllegalStateException("no words for " + reason);
                        },
                        facts -> {},
                        published::add,
                        stops::incrementAndGet));
        assertThat(got(speechless.press(press("p1", moved(head.id(), Place.chair(150))))))
                .isEqualTo(new Answer.Bug());
        assertThat(got(speechless.press(press("p2", breakOf(story.stylist()))))).isInstanceOf(Answer.Decided.class);
        assertThat(ledger.facts()).hasSize(1);
        speechless.close();
    }

    @Test
    void aScreenThatFailsToHearDoesNotStopTheDesk() throws Exception {
        FloorDesk deaf = new FloorDesk(
                Snapshot.of(story.floor(), Map.of()),
                new FloorDesk.Tools(
                        ledger,
                        new PressMemory(id -> Optional.empty()),
                        (r, f, t) -> "",
                        facts -> {},
                        snapshot -> {
                            throw new IllegalStateException("no screen");
                        },
                        stops::incrementAndGet));
        assertThat(got(deaf.press(press("p1", mix())))).isInstanceOf(Answer.Decided.class);
        assertThat(got(deaf.press(press("p2", mix())))).isInstanceOf(Answer.Decided.class);
        assertThat(stops).hasValue(0);
        deaf.close();
    }

    @Test
    void closingAnswersWhatWaitsAndTakesNoMore() throws Exception {
        ledger.hold();
        CompletableFuture<Answer> writing = desk.press(press("p1", mix()));
        ledger.awaitForce();
        CompletableFuture<Answer> waiting = desk.press(press("p2", mix()));
        Thread closing = new Thread(desk::close);
        closing.start();
        ledger.letGo();
        assertThat(got(writing)).isInstanceOf(Answer.Decided.class);
        assertThat(got(waiting)).isInstanceOf(Answer.Decided.class);
        closing.join();
        assertThat(got(desk.press(press("p3", mix())))).isEqualTo(new Answer.NotSaved(false));
        assertThat(ledger.facts()).hasSize(2);
    }

    @Test
    void aPressFromTheStoreIsKnownAfterARestart() throws Exception {
        got(desk.press(press("p1", mix())));
        var kept = ledger.entries().get(0);
        PressMemory memory = new PressMemory(id -> id.equals("p1")
                ? Optional.of(new PressMemory.Stored(kept.payloadHash(), kept.outcome()))
                : Optional.empty());
        FloorDesk next = new FloorDesk(
                desk.snapshot(),
                new FloorDesk.Tools(
                        ledger, memory, (r, f, t) -> "", facts -> {}, published::add, stops::incrementAndGet));
        Outcome again = ((Answer.Decided) got(next.press(press("p1", mix())))).outcome();
        assertThat(again.facts()).containsExactly(ledger.facts().get(0).seq());
        assertThat(ledger.facts()).hasSize(1);
        next.close();
    }

    /** It may have counted before: nothing is decided, and burning is heard all the same. */
    @Test
    void whatCannotBeLookedUpIsNotSavedAndRings() throws Exception {
        AtomicInteger asked = new AtomicInteger();
        PressMemory memory = new PressMemory(id -> {
            asked.incrementAndGet();
            throw new DatabaseAway(new IOException("no space left on device"));
        });
        FloorDesk forgetful = new FloorDesk(
                desk.snapshot(),
                new FloorDesk.Tools(
                        ledger, memory, (r, f, t) -> "", facts -> {}, published::add, stops::incrementAndGet));
        assertThat(got(forgetful.press(press("p1", mix())))).isEqualTo(new Answer.NotSaved(false));
        assertThat(got(forgetful.press(press("p2", complains(BURNING))))).isEqualTo(new Answer.NotSaved(true));
        assertThat(burning(forgetful.snapshot())).hasSize(1);
        assertThat(published).hasSize(1);
        assertThat(forgetful.answered("p1", "hash of p1")).isEmpty();
        assertThat(asked).hasValue(3);
        assertThat(ledger.facts()).isEmpty();
        forgetful.close();
    }

    @Test
    void atADaysEndTheLiveFloorIsCutDown() throws Exception {
        got(desk.press(press("p1", Report.of(head.id(), new StayEvent.Left()))));
        assertThat(desk.snapshot().floor().visits()).hasSize(1);
        Asked nextDay = Asked.at(TEN.plus(Duration.ofHours(20)));
        got(desk.press(
                new Press("p2", "", "hash", new EndDay(LocalDate.ofInstant(nextDay.now(), ZoneOffset.UTC)), nextDay)));
        Snapshot turned = desk.snapshot();
        assertThat(turned.floor().visits()).isEmpty();
        assertThat(turned.floor().lastSeq()).isEqualTo(ledger.facts().get(1).seq());
        assertThat(ledger.facts().get(1).event()).isEqualTo(new DayEvent.DayEnded());
        assertThat(turned.floor().salon()).isEqualTo(story.floor().salon());
    }
}
