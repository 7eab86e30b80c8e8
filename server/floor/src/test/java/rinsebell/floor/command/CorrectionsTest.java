package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.ReasonCode.CANNOT_BE_CORRECTED;
import static rinsebell.floor.ReasonCode.NOT_KNOWN;
import static rinsebell.floor.ReasonCode.OTHERS_HANG_ON_IT;
import static rinsebell.floor.testing.Desk.isAccepted;
import static rinsebell.floor.testing.Desk.refusal;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.util.Set;
import org.junit.jupiter.api.Test;
import rinsebell.floor.Decision;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Ringing;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.WorkEvent;

/** Set-back and withdrawal are facts that name another fact; withdrawing takes along what hangs on it, all or none. */
class CorrectionsTest {
    private final Story story = Story.stocked();
    private final Head head = story.at("09:50").arrivesFine();
    private final BowlId bowl = story.at("09:55").mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30));
    private final ApplicationId on = story.at("10:00").puts(head, bowl, offScalp(Area.LENGTHS));
    private final long lastOn = lastOnAtFive();
    private final Desk desk = Desk.after(story).at("10:10");

    private long lastOnAtFive() {
        story.at("10:05");
        return head.lastOn(on);
    }

    private void withdraws(long seq) {
        assertThat(isAccepted(desk.plans(new WithdrawFact(seq, Set.of())))).isTrue();
    }

    @Test
    void whatHangsOnAFactIsListed() {
        var refused = (Decision.Refused) desk.plans(new WithdrawFact(bowl.value(), Set.of()));
        assertThat(refused.reasons()).hasSize(1);
        assertThat(refused.reasons().get(0).code()).isEqualTo(OTHERS_HANG_ON_IT);
        assertThat(refused.reasons().get(0).args()).containsExactly(on.value(), lastOn);
        assertThat(refused.canBeFact()).isFalse();
    }

    @Test
    void someOfItIsNotEnough() {
        var before = desk.floor();
        assertThat(refusal(desk.plans(new WithdrawFact(bowl.value(), Set.of(on.value())))))
                .containsExactly(OTHERS_HANG_ON_IT);
        assertThat(refusal(desk.reports(new WithdrawFact(bowl.value(), Set.of(lastOn)))))
                .containsExactly(OTHERS_HANG_ON_IT);
        assertThat(desk.floor()).isSameAs(before);
    }

    @Test
    void allOfItGoesAlong() {
        desk.plans(new WithdrawFact(bowl.value(), Set.of(on.value(), lastOn)));
        assertThat(desk.floor().bowl(bowl)).isEmpty();
        assertThat(desk.floor().visit(head.id()).orElseThrow().applications()).isEmpty();
        assertThat(desk.floor().standing(lastOn)).isEmpty();
    }

    @Test
    void agreeingToMoreTakesNoMore() {
        withdraws(lastOn);
        assertThat(desk.floor().standing(on.value())).isPresent();
        desk.plans(new WithdrawFact(on.value(), Set.of(bowl.value(), lastOn)));
        assertThat(desk.floor().standing(on.value())).isEmpty();
        assertThat(desk.floor().bowl(bowl)).isPresent();
    }

    @Test
    void anAcknowledgementGoesAlongWithoutAsking() {
        desk.at("10:12");
        var bell = Ringing.bell(desk.floor(), BellKind.STRAND_CHECK);
        assertThat(isAccepted(desk.plans(new Acknowledge(bell.key(), null)))).isTrue();
        var seen = desk.last();
        desk.plans(new WithdrawFact(on.value(), Set.of(lastOn)));
        assertThat(desk.floor().standing(on.value())).isEmpty();
        assertThat(desk.floor().standing(seen)).isEmpty();
    }

    @Test
    void everythingOfAVisitHangsOnItsArrival() {
        var refused = (Decision.Refused) desk.plans(new WithdrawFact(head.id().value(), Set.of()));
        assertThat(refused.reasons().get(0).args()).contains(on.value(), lastOn).doesNotContain(bowl.value());
    }

    @Test
    void whatIsWithdrawnCannotBeWithdrawnAgain() {
        withdraws(lastOn);
        assertThat(refusal(desk.plans(new WithdrawFact(lastOn, Set.of())))).containsExactly(NOT_KNOWN);
        assertThat(refusal(desk.plans(new SetFactBack(lastOn, at("10:04"))))).containsExactly(NOT_KNOWN);
    }

    @Test
    void aWithdrawalMayBeTakenBack() {
        withdraws(lastOn);
        withdraws(desk.last());
        assertThat(desk.floor().standing(lastOn)).isPresent();
    }

    @Test
    void aWithdrawalIsTakenBackOnlyWhileWhatItsFactHangsOnStands() {
        withdraws(lastOn);
        var withdrawal = desk.last();
        withdraws(on.value());
        var below = desk.last();
        assertThat(refusal(desk.plans(new WithdrawFact(withdrawal, Set.of())))).containsExactly(CANNOT_BE_CORRECTED);
        withdraws(below);
        withdraws(withdrawal);
        assertThat(desk.floor().standing(lastOn)).isPresent();
    }

    @Test
    void takingBackAReturnListsWhatHangsOnTheFactByThen() {
        withdraws(lastOn);
        withdraws(on.value());
        withdraws(desk.last());
        var back = desk.last();
        desk.reports(Report.of(head.id(), new WorkEvent.LastOn(on)));
        var again = desk.last();
        var refused = (Decision.Refused) desk.plans(new WithdrawFact(back, Set.of()));
        assertThat(refused.reasons().get(0).args()).containsExactly(again);
        desk.plans(new WithdrawFact(back, Set.of(again)));
        assertThat(desk.floor().standing(on.value())).isEmpty();
        assertThat(desk.floor().standing(again)).isEmpty();
    }

    @Test
    void aClockThatWasPutRightIsPutRightOnceMoreInstead() {
        desk.plans(new OnDay(new DayEvent.ClockShifted(minutes(1))));
        assertThat(refusal(desk.plans(new WithdrawFact(desk.last(), Set.of())))).containsExactly(CANNOT_BE_CORRECTED);
        assertThat(refusal(desk.plans(new SetFactBack(desk.last(), at("10:00")))))
                .containsExactly(CANNOT_BE_CORRECTED);
    }

    @Test
    void aSetBackMayBeTakenBack() {
        desk.plans(new SetFactBack(lastOn, at("10:03")));
        withdraws(desk.last());
        assertThat(desk.floor().standing(lastOn).orElseThrow().happened()).isEqualTo(at("10:05"));
    }

    @Test
    void theSetUpIsNotCorrectedButRevised() {
        assertThat(refusal(desk.plans(new WithdrawFact(1, Set.of())))).containsExactly(CANNOT_BE_CORRECTED);
        assertThat(refusal(desk.plans(new SetFactBack(1, at("10:00"))))).containsExactly(CANNOT_BE_CORRECTED);
    }

    @Test
    void aClosedVisitCanStillBeCorrectedAndRingsNothing() {
        story.at("10:40");
        head.rinses(on);
        head.leaves();
        var closed = Desk.after(story).at("11:00");
        assertThat(isAccepted(closed.plans(new SetFactBack(lastOn, at("10:03")))))
                .isTrue();
        assertThat(isAccepted(closed.plans(new WithdrawFact(lastOn, Set.of())))).isTrue();
        assertThat(closed.floor().bells()).isEmpty();
    }
}
