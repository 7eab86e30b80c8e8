package rinsebell.floor.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.ReasonCode.NO_CHEMICAL_ON_SCALP_TODAY;
import static rinsebell.floor.ReasonCode.ROUND_OFF_SCALP_ONLY;
import static rinsebell.floor.testing.Saturday.DATE;
import static rinsebell.floor.testing.Saturday.on;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.DEV30;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Shelf.REMOVER;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Complaint;

/**
 * "Off scalp only" binds another lightening round on a scalp that was lightened today; after severe discomfort no
 * chemical goes on it at all. Common practice, no source.
 */
class RoundsTest extends AskedHead {
    /** Lightened on the scalp from 10:00 and rinsed at 10:40. */
    private void roundOnScalp() {
        story.at("10:00");
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:40");
        head.rinses(on);
        story.at("10:50");
    }

    @Test
    void aVirginHeadIsDoneLengthsFirstAndThenTheScalpWithAFreshBowl() {
        story.at("10:00");
        var lengths = head.puts(cream(), offScalp(Area.LENGTHS));
        story.at("10:20");
        assertThat(against(cream(), Zone.ON_SCALP)).isEmpty();
        head.rinses(lengths);
        assertThat(against(cream(), Zone.ON_SCALP))
                .as("even after the lengths are rinsed")
                .isEmpty();
    }

    @Test
    void aRefillInTheMiddleIsNoOtherRound() {
        story.at("10:00");
        head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:20");
        assertThat(against(story.mixes(BowlReason.REFILL, g(60, MILD_CREAM), g(60, DEV20)), Zone.ON_SCALP))
                .isEmpty();
        assertThat(against(powder(), Zone.OFF_SCALP)).isEmpty();
        head.puts(powder(), offScalp(Area.FOILS_ALL));
        assertThat(against(story.mixes(BowlReason.REFILL, g(60, POWDER), g(60, DEV30)), Zone.OFF_SCALP))
                .isEmpty();
    }

    @Test
    void afterARinseAnotherRoundIsOffScalpOnly() {
        roundOnScalp();
        assertThat(against(cream(), Zone.ON_SCALP)).containsExactly(ROUND_OFF_SCALP_ONLY);
        assertThat(against(cream(), Zone.OFF_SCALP)).isEmpty();
        assertThat(against(powder(), Zone.OFF_SCALP)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(BowlReason.class)
    void whateverReasonTheBowlWasMixedFor(BowlReason reason) {
        roundOnScalp();
        assertThat(against(story.mixes(reason, g(60, MILD_CREAM), g(60, DEV20)), Zone.ON_SCALP))
                .containsExactly(ROUND_OFF_SCALP_ONLY);
    }

    @Test
    void wipedOffIsOffAsWell() {
        story.at("10:00");
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:40");
        head.wipesOff(on);
        assertThat(against(cream(), Zone.ON_SCALP)).containsExactly(ROUND_OFF_SCALP_ONLY);
    }

    @Test
    void aBowlMixedAsAnotherRoundIsOneEvenBeforeTheRinseIsWrittenDown() {
        story.at("10:00");
        head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:40");
        assertThat(against(story.mixes(BowlReason.ANOTHER_ROUND, g(60, MILD_CREAM), g(60, DEV20)), Zone.ON_SCALP))
                .containsExactly(ROUND_OFF_SCALP_ONLY);
    }

    @Test
    void aTonerFollowsItsOwnDirections() {
        roundOnScalp();
        assertThat(against(toner(), Zone.ON_SCALP)).isEmpty();
        assertThat(against(story.mixes(g(40, REMOVER)), Zone.ON_SCALP)).isEmpty();
    }

    @Test
    void whatWasNotLightenerBindsNoRound() {
        story.at("10:00");
        var on = head.puts(toner(), onScalp(Area.REGROWTH));
        story.at("10:20");
        head.rinses(on);
        assertThat(against(cream(), Zone.ON_SCALP)).isEmpty();
    }

    @Test
    void anEarlierBowlOfUnknownRecipeMayHaveBeenLightener() {
        story.at("10:00");
        var on = head.puts(story.mixes(), onScalp(Area.REGROWTH));
        story.at("10:20");
        head.rinses(on);
        assertThat(against(cream(), Zone.ON_SCALP)).as("refuses the plan").containsExactly(ROUND_OFF_SCALP_ONLY);
        assertThat(brokenBy(head.puts(cream(), onScalp(Area.REGROWTH))))
                .as("rings nothing")
                .isEmpty();
    }

    @Test
    void theSameClientsSecondVisitThatDayIsBoundToo() {
        roundOnScalp();
        head.leaves();
        story.at("15:00");
        var again = story.arrives(new ClientId(70));
        again.answers(Gates.FINE);
        assertThat(against(again, cream(), Zone.ON_SCALP, Cover.OPEN)).containsExactly(ROUND_OFF_SCALP_ONLY);
        var another = story.arrives(new ClientId(71));
        another.answers(Gates.FINE);
        assertThat(against(another, cream(), Zone.ON_SCALP, Cover.OPEN)).isEmpty();
        var unknown = story.arrivesFine();
        assertThat(against(unknown, cream(), Zone.ON_SCALP, Cover.OPEN)).isEmpty();
    }

    // A salon day turns at 04:00, so a late evening's round binds until then.
    @ParameterizedTest
    @CsvSource({"03:59:59.999, true", "04:00, false", "04:00:00.001, false"})
    void theNextSalonDayIsFree(String clock, boolean bound) {
        story.at("22:00");
        var late = head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("22:40");
        head.rinses(late);
        story.at(on(DATE.plusDays(1), clock));
        var fresh = cream();
        assertThat(against(fresh, Zone.ON_SCALP)).isEqualTo(bound ? List.of(ROUND_OFF_SCALP_ONLY) : List.of());
    }

    @Test
    void aRoundPutOnScalpAnywayIsBroken() {
        roundOnScalp();
        assertThat(brokenBy(head.puts(cream(), onScalp(Area.REGROWTH)))).containsExactly(ROUND_OFF_SCALP_ONLY);
    }

    @ParameterizedTest
    @EnumSource(Complaint.Grade.class)
    void afterSevereDiscomfortNoChemicalGoesOnThatScalpToday(Complaint.Grade grade) {
        story.at("10:00");
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:10");
        head.complains(grade);
        head.rinses(on);
        story.at("10:20");
        var expected = grade == Complaint.Grade.TINGLING ? List.of() : List.of(NO_CHEMICAL_ON_SCALP_TODAY);
        assertThat(against(toner(), Zone.ON_SCALP)).isEqualTo(expected);
        assertThat(against(story.mixes(g(40, REMOVER)), Zone.ON_SCALP)).isEqualTo(expected);
        assertThat(against(toner(), Zone.OFF_SCALP)).as("off scalp it may").isEmpty();
    }

    @Test
    void noChemicalOnTheSameClientsNextVisitThatDayEither() {
        story.at("10:00");
        head.complains(Complaint.Grade.BURNING);
        head.leaves();
        story.at("15:00");
        var again = story.arrives(new ClientId(70));
        again.answers(Gates.FINE);
        assertThat(against(again, toner(), Zone.ON_SCALP, Cover.OPEN)).containsExactly(NO_CHEMICAL_ON_SCALP_TODAY);
    }

    @ParameterizedTest
    @CsvSource({"03:59:59.999, true", "04:00, false", "04:00:00.001, false"})
    void afterSevereDiscomfortTheNextSalonDayIsFree(String clock, boolean bound) {
        story.at("22:00");
        head.complains(Complaint.Grade.BURNING);
        story.at(on(DATE.plusDays(1), clock));
        var expected = bound ? List.of(NO_CHEMICAL_ON_SCALP_TODAY) : List.of();
        assertThat(against(story.mixes(g(40, REMOVER)), Zone.ON_SCALP)).isEqualTo(expected);
    }

    @Test
    void whateverIsInItNothingGoesOnAScalpAfterSevereDiscomfort() {
        head.complains(Complaint.Grade.BURNING);
        story.at("10:20");
        assertThat(brokenBy(head.puts(story.mixes(), onScalp(Area.REGROWTH))))
                .containsExactly(NO_CHEMICAL_ON_SCALP_TODAY);
    }
}
