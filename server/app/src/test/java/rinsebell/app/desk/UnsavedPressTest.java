package rinsebell.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.TEN;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.Asked;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.command.Report;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Complaint.Grade;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;

/** Presses that the disk does not take, or takes too long over. */
class UnsavedPressTest extends DeskAtWork {

    @Test
    void whatIsNotSavedChangesNothing() throws Exception {
        Snapshot before = desk.snapshot();
        ledger.fillUp();
        assertThat(got(desk.press(press("p1", mix())))).isEqualTo(new Answer.NotSaved(false));
        assertThat(desk.snapshot()).isEqualTo(before);
        assertThat(published).isEmpty();
        assertThat(stops).hasValue(0);
        ledger.makeRoom();
        assertThat(((Answer.Decided) got(desk.press(press("p1", mix()))))
                        .outcome()
                        .accepted())
                .isTrue();
    }

    @Test
    void burningThatCannotBeSavedRingsAllTheSame() throws Exception {
        ledger.fillUp();
        assertThat(got(desk.press(press("p1", complains(BURNING))))).isEqualTo(new Answer.NotSaved(true));
        assertThat(published).hasSize(1);
        Snapshot shown = desk.snapshot();
        assertThat(shown.floor()).isEqualTo(story.floor());
        assertThat(burning(shown)).singleElement().satisfies(bell -> {
            assertThat(bell.key().isSaved()).isFalse();
            assertThat(bell.visit()).isEqualTo(head.id());
            assertThat(bell.at(TEN)).isPresent();
        });
    }

    @Test
    void burningSaidTwiceRingsOnce() throws Exception {
        ledger.fillUp();
        got(desk.press(press("p1", complains(BURNING))));
        got(desk.press(press("p2", complains(BURNING))));
        assertThat(burning(desk.snapshot())).hasSize(1);
    }

    @Test
    void tinglingThatCannotBeSavedIsOnlyTold() throws Exception {
        ledger.fillUp();
        assertThat(got(desk.press(press("p1", complains(Grade.TINGLING))))).isEqualTo(new Answer.NotSaved(false));
        assertThat(published).isEmpty();
    }

    @Test
    void savedAtLastItRingsAsItShould() throws Exception {
        ledger.fillUp();
        got(desk.press(press("p1", complains(BURNING))));
        ledger.makeRoom();
        got(desk.press(press("p1", complains(BURNING))));
        assertThat(burning(desk.snapshot()))
                .singleElement()
                .satisfies(bell -> assertThat(bell.key().isSaved()).isTrue());
    }

    @Test
    void anUnsavedBurningRingsOnThroughOtherPressesUntilTheScalpWasLookedAt() throws Exception {
        ledger.fillUp();
        got(desk.press(press("p1", complains(BURNING))));
        ledger.makeRoom();
        got(desk.press(press("p2", mix())));
        assertThat(burning(desk.snapshot())).hasSize(1);
        LookEvent looked = new LookEvent.ScalpChecked(ScalpCheck.Finding.FINE, null);
        got(desk.press(press("p3", Report.of(head.id(), looked))));
        assertThat(burning(desk.snapshot())).isEmpty();
        assertThat(desk.snapshot().alarms()).isEmpty();
    }

    @Test
    void anUnsavedBurningCanBeHeard() throws Exception {
        ledger.fillUp();
        got(desk.press(press("p1", complains(BURNING))));
        ledger.makeRoom();
        BellKey key = burning(desk.snapshot()).get(0).key();
        Answer.Decided heard = (Answer.Decided) got(desk.press(press("p2", new Acknowledge(key, null))));
        assertThat(heard.outcome().accepted()).isTrue();
        assertThat(burning(desk.snapshot()))
                .singleElement()
                .satisfies(bell -> assertThat(bell.isSeen(TEN)).isTrue());
    }

    /** After a restart only what is on disk is left, and that somebody heard the first one is. */
    @Test
    void aLaterUnsavedBurningIsNotHeardAlready() throws Exception {
        anUnsavedBurningCanBeHeard();
        FloorDesk next = desk(desk.snapshot().floor());
        ledger.fillUp();
        Instant later = TEN.plusMillis(1);
        got(next.press(new Press("p3", "", "hash", complains(BURNING), Asked.at(later))));
        assertThat(burning(next.snapshot()))
                .singleElement()
                .satisfies(bell -> assertThat(bell.isSeen(later)).isFalse());
        next.close();
    }

    @Test
    void theClockPutRightMovesAnUnsavedBurningOnce() throws Exception {
        Duration by = Duration.ofHours(14);
        ledger.fillUp();
        got(desk.press(press("p1", complains(BURNING))));
        ledger.makeRoom();
        got(desk.press(press("p2", new OnDay(new DayEvent.ClockShifted(by)))));
        assertThat(burning(desk.snapshot()))
                .singleElement()
                .satisfies(bell -> assertThat(bell.since()).isEqualTo(TEN.plus(by)));
    }

    /** It was said on the new clock already, whichever way that was set. */
    @ParameterizedTest
    @ValueSource(longs = {14, -2})
    void theClockPutRightBeforeDoesNotMoveAnUnsavedBurning(long hours) throws Exception {
        Duration by = Duration.ofHours(hours);
        got(desk.press(press("p1", new OnDay(new DayEvent.ClockShifted(by)))));
        ledger.fillUp();
        Instant now = TEN.plus(by);
        got(desk.press(new Press("p2", "", "hash", complains(BURNING), Asked.at(now))));
        assertThat(burning(desk.snapshot()))
                .singleElement()
                .satisfies(bell -> assertThat(bell.since()).isEqualTo(now));
    }

    @Test
    void inABatchThatIsLostWhatStoodBeforeStands() throws Exception {
        Outcome before = ((Answer.Decided) got(desk.press(press("p1", mix())))).outcome();
        ledger.hold();
        CompletableFuture<Answer> blocking = desk.press(press("p2", breakOf(story.stylist())));
        ledger.awaitForce();
        CompletableFuture<Answer> again = desk.press(press("p1", mix()));
        CompletableFuture<Answer> other = desk.press(new Press("p1", "", "another hash", mix(), Asked.at(TEN)));
        CompletableFuture<Answer> fresh = desk.press(press("p3", mix()));
        ledger.fillUp();
        ledger.letGo();
        got(blocking);
        assertThat(((Answer.Decided) got(again)).outcome()).isEqualTo(before);
        assertThat(((Answer.Decided) got(again)).floor())
                .isEqualTo(desk.snapshot().floor());
        assertThat(got(other)).isEqualTo(new Answer.OtherPress());
        assertThat(got(fresh)).isEqualTo(new Answer.NotSaved(false));
    }

    @Test
    void aPressThatWaitedTooLongIsTakenBackAndNeverSaved() throws Exception {
        ledger.hold();
        CompletableFuture<Answer> writing = desk.press(press("p1", breakOf(story.stylist())));
        ledger.awaitForce();
        assertThat(desk.answer(press("p2", mix()), Duration.ZERO)).isEqualTo(new Answer.NotSaved(false));
        ledger.letGo();
        got(writing);
        assertThat(got(desk.press(press("p3", moved(head.id(), Place.chair(5))))))
                .isInstanceOf(Answer.Decided.class);
        assertThat(ledger.entries()).extracting(entry -> entry.id()).containsExactly("p1", "p3");
    }

    @Test
    void ofAPressThatIsBeingWrittenNobodyKnowsUntilItIsAskedAgain() throws Exception {
        ledger.hold();
        CompletableFuture<Answer> writing = desk.press(press("p1", mix()));
        ledger.awaitForce();
        assertThat(desk.answer(press("p1", mix()), Duration.ZERO)).isEqualTo(new Answer.NotKnown());
        ledger.letGo();
        Outcome outcome = ((Answer.Decided) got(writing)).outcome();
        Answer.Decided again = (Answer.Decided) desk.answer(press("p1", mix()), Duration.ofSeconds(10));
        assertThat(again.outcome()).isEqualTo(outcome);
        assertThat(ledger.entries()).hasSize(1);
    }

    @Test
    void burningRingsWhileTheDiskHangs() throws Exception {
        ledger.hold();
        CompletableFuture<Answer> writing = desk.press(press("p1", mix()));
        ledger.awaitForce();
        assertThat(desk.answer(press("p2", complains(BURNING)), Duration.ZERO)).isEqualTo(new Answer.NotSaved(true));
        assertThat(burning(desk.snapshot())).hasSize(1);
        ledger.letGo();
        got(writing);
        assertThat(burning(desk.snapshot())).hasSize(1);
        assertThat(desk.snapshot().floor().day().bowls()).hasSize(1);
    }

    @Test
    void whenNobodyCanTellWhatIsOnDiskNothingIsAnsweredAndTheProcessStops() throws Exception {
        ledger.breakDown();
        CompletableFuture<Answer> answer = desk.press(press("p1", mix()));
        desk.close();
        assertThat(stops).hasValue(1);
        assertThat(answer).isNotDone();
        assertThat(published).isEmpty();
    }
}
