package rinsebell.floor.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.ReasonCode.BOWL_PAST_USE;
import static rinsebell.floor.ReasonCode.COVER_NOT_ALLOWED;
import static rinsebell.floor.ReasonCode.HEAT_NOT_ALLOWED;
import static rinsebell.floor.ReasonCode.NEVER_MIXED;
import static rinsebell.floor.ReasonCode.NO_CHEMICAL_ON_SCALP_TODAY;
import static rinsebell.floor.ReasonCode.OFF_SCALP_PRODUCT;
import static rinsebell.floor.ReasonCode.RECIPE_UNKNOWN;
import static rinsebell.floor.ReasonCode.ROUND_OFF_SCALP_ONLY;
import static rinsebell.floor.testing.Saturday.DATE;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.on;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV10;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.DEV30;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Shelf.PERMANENT;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Shelf.REMOVER;
import static rinsebell.floor.testing.Shelf.STRONG_CREAM;
import static rinsebell.floor.testing.Shelf.TONER;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.Scalp;
import rinsebell.floor.visit.Gate.SkinTest;

/** What a head's directions and history forbid, as a plan and as a fact. Common practice, no source. */
class RestrictionsTest {
    private final Story story = Story.stocked().at("09:50");
    private final Head head = story.arrives(new ClientId(70));

    RestrictionsTest() {
        head.answers(Gates.FINE);
    }

    private BowlId cream() {
        return story.mixes(g(60, MILD_CREAM), g(60, DEV20));
    }

    private BowlId powder() {
        return story.mixes(g(60, POWDER), g(60, DEV30));
    }

    private BowlId toner() {
        return story.mixes(g(60, TONER), g(60, DEV10));
    }

    private Restrictions restrictions(Head whose) {
        return new Restrictions(story.floor(), whose.visit());
    }

    private List<ReasonCode> against(BowlId bowl, Zone zone) {
        return against(head, bowl, zone, Cover.OPEN);
    }

    private List<ReasonCode> against(Head whose, BowlId bowl, Zone zone, Cover cover) {
        return codes(restrictions(whose).against(new Restrictions.Putting(bowl, zone, cover, story.now())));
    }

    private List<ReasonCode> brokenBy(ApplicationId application) {
        return codes(restrictions(head)
                .brokenBy(head.visit().application(application).orElseThrow()));
    }

    private List<ReasonCode> gatePassedBy(ApplicationId application) {
        return codes(restrictions(head)
                .gatePassedBy(head.visit().application(application).orElseThrow()));
    }

    private static List<ReasonCode> codes(List<Reason> reasons) {
        return reasons.stream().map(Reason::code).toList();
    }

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
    void anOffScalpProductNeverTouchesTheScalp() {
        assertThat(against(powder(), Zone.ON_SCALP)).containsExactly(OFF_SCALP_PRODUCT);
        assertThat(against(powder(), Zone.OFF_SCALP)).isEmpty();
        assertThat(against(story.mixes(g(60, POWDER), g(15, MILD_CREAM), g(60, DEV20)), Zone.ON_SCALP))
                .as("nor does what it is mixed into")
                .containsExactly(OFF_SCALP_PRODUCT);
        assertThat(brokenBy(head.puts(powder(), onScalp(Area.REGROWTH)))).containsExactly(OFF_SCALP_PRODUCT);
    }

    // The mild cream of the shelf allows foil, and no plastic.
    @ParameterizedTest
    @CsvSource({"OPEN, true", "FOIL, true", "FILM, false", "CAP, false"})
    void eachCoverByItself(Cover cover, boolean allowed) {
        var expected = allowed ? List.of() : List.of(COVER_NOT_ALLOWED);
        assertThat(against(head, cream(), Zone.ON_SCALP, cover)).isEqualTo(expected);
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        var application = head.visit().application(on).orElseThrow();
        assertThat(codes(restrictions(head).against(application, cover))).isEqualTo(expected);
        head.covers(on, cover);
        assertThat(brokenBy(on)).isEqualTo(expected);
    }

    // The mild cream of the shelf allows gentle steam, powder no heat, in foil neither.
    @ParameterizedTest
    @CsvSource({"GENTLE_STEAM, true", "WARM_AIR, false", "DRYER, false"})
    void eachHeatByItself(Heat heat, boolean allowed) {
        var expected = allowed ? List.of() : List.of(HEAT_NOT_ALLOWED);
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        assertThat(codes(restrictions(head).against(heat))).isEqualTo(expected);
        head.heats(heat);
        assertThat(brokenBy(on)).isEqualTo(expected);
        assertThat(against(cream(), Zone.ON_SCALP))
                .as("what goes under a heat that is on")
                .isEqualTo(expected);
        head.heatOff();
        assertThat(brokenBy(on)).isEmpty();
    }

    @Test
    void everythingOnTheHeadMustAllowAHeat() {
        head.puts(cream(), onScalp(Area.REGROWTH));
        head.puts(powder(), offScalp(Area.FOILS_ALL));
        assertThat(codes(restrictions(head).against(Heat.GENTLE_STEAM))).containsExactly(HEAT_NOT_ALLOWED);
    }

    @Test
    void nothingOnForbidsNoHeat() {
        assertThat(restrictions(head).against(Heat.DRYER)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"10:59:59.999, false", "11:00, true", "11:00:00.001, true"})
    void pastItsUsableTimeNothingMoreGoesOn(String clock, boolean past) {
        story.at("10:00");
        var bowl = powder();
        story.at(clock);
        var expected = past ? List.of(BOWL_PAST_USE) : List.of();
        assertThat(against(bowl, Zone.OFF_SCALP)).isEqualTo(expected);
        assertThat(brokenBy(head.puts(bowl, offScalp(Area.LENGTHS)))).isEqualTo(expected);
    }

    @Test
    void anUnknownRecipeRefusesPlansAndRingsNothing() {
        var bowl = story.mixes();
        assertThat(against(bowl, Zone.OFF_SCALP)).contains(RECIPE_UNKNOWN);
        var on = head.puts(bowl, onScalp(Area.REGROWTH).under(Cover.FILM));
        assertThat(brokenBy(on)).isEmpty();
        assertThat(codes(restrictions(head).against(Heat.DRYER))).containsExactly(RECIPE_UNKNOWN);
        var application = head.visit().application(on).orElseThrow();
        assertThat(codes(restrictions(head).against(application, Cover.FILM))).containsExactly(RECIPE_UNKNOWN);
        story.fills(bowl, g(60, STRONG_CREAM), g(60, DEV20));
        assertThat(brokenBy(on)).as("once it is filled in it may").containsExactly(COVER_NOT_ALLOWED);
    }

    @Test
    void anUnknownBowlThatStoodLongRingsNothing() {
        var bowl = story.mixes();
        story.at("13:00");
        assertThat(against(bowl, Zone.OFF_SCALP)).contains(RECIPE_UNKNOWN, BOWL_PAST_USE);
        assertThat(brokenBy(head.puts(bowl, offScalp(Area.LENGTHS)))).isEmpty();
    }

    @Test
    void whateverIsInItNothingGoesOnAScalpAfterSevereDiscomfort() {
        head.complains(Complaint.Grade.BURNING);
        story.at("10:20");
        assertThat(brokenBy(head.puts(story.mixes(), onScalp(Area.REGROWTH))))
                .containsExactly(NO_CHEMICAL_ON_SCALP_TODAY);
    }

    @Test
    void aForbiddenMixtureIsRefusedAndBrokenOnTheHead() {
        var bowl = story.mixes(g(60, POWDER), g(7, PERMANENT), g(67, DEV30));
        assertThat(against(bowl, Zone.OFF_SCALP)).containsExactly(NEVER_MIXED);
        assertThat(brokenBy(head.puts(bowl, offScalp(Area.LENGTHS)))).containsExactly(NEVER_MIXED);
    }

    @Test
    void theGateIsPassedByWhatIsOnAnyway() {
        head.answers(Gates.fineBut(Scalp.SORE));
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        assertThat(gatePassedBy(on)).containsExactly(ReasonCode.SCALP_NOT_SOUND);
        assertThat(against(cream(), Zone.ON_SCALP)).containsExactly(ReasonCode.SCALP_NOT_SOUND);
    }

    @Test
    void theGateIsPassedByAnUnknownRecipeWhereItRefusesEverything() {
        var unknown = head.puts(story.mixes(), onScalp(Area.HAIRLINE));
        head.answers(Gates.fineBut(Metal.PRESENT).over(Gates.fineBut(SkinTest.NOT_DONE)));
        assertThat(gatePassedBy(unknown)).isEmpty();
        head.answers(Gates.fineBut(Scalp.SORE));
        assertThat(gatePassedBy(unknown)).containsExactly(ReasonCode.SCALP_NOT_SOUND);
    }

    @Test
    void anUnansweredGateSpeaksOfAnUnknownRecipeToo() {
        var other = story.arrives();
        var on = other.puts(story.mixes(), offScalp(Area.LENGTHS));
        var application = other.visit().application(on).orElseThrow();
        assertThat(codes(restrictions(other).gatePassedBy(application))).containsExactly(ReasonCode.GATE_OPEN);
    }

    @Test
    void whatAnotherBowlHasCoveredStillBreaksWhatItBreaks() {
        var first = head.puts(powder(), onScalp(Area.REGROWTH).under(Cover.CAP));
        assertThat(brokenBy(first)).containsExactly(OFF_SCALP_PRODUCT, COVER_NOT_ALLOWED);
        head.puts(cream(), onScalp(Area.REGROWTH));
        head.heats(Heat.GENTLE_STEAM);
        assertThat(brokenBy(first))
                .as("but what lies over it now is the other's matter")
                .containsExactly(OFF_SCALP_PRODUCT, HEAT_NOT_ALLOWED);
    }

    @Test
    void everyReasonIsSaidTheWorstFirst() {
        head.answers(Gates.fineBut(Scalp.BROKEN));
        head.heats(Heat.DRYER);
        story.at("10:00");
        var bowl = powder();
        story.at("11:00");
        assertThat(against(head, bowl, Zone.ON_SCALP, Cover.CAP))
                .containsExactly(
                        ReasonCode.SCALP_NOT_SOUND,
                        OFF_SCALP_PRODUCT,
                        HEAT_NOT_ALLOWED,
                        COVER_NOT_ALLOWED,
                        BOWL_PAST_USE);
        assertThat(at("11:00")).isEqualTo(story.now());
    }
}
