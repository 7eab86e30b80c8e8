package rinsebell.floor.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.ReasonCode.BOWL_PAST_USE;
import static rinsebell.floor.ReasonCode.COVER_NOT_ALLOWED;
import static rinsebell.floor.ReasonCode.HEAT_NOT_ALLOWED;
import static rinsebell.floor.ReasonCode.NEVER_MIXED;
import static rinsebell.floor.ReasonCode.OFF_SCALP_PRODUCT;
import static rinsebell.floor.ReasonCode.RECIPE_UNKNOWN;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.on;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.DEV30;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Shelf.PERMANENT;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Shelf.STRONG_CREAM;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Zone;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Leaflet;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.Scalp;
import rinsebell.floor.visit.Gate.SkinTest;

/** What directions, covers, heats and an unknown recipe forbid, as a plan and as a fact. Common practice, no source. */
class RestrictionsTest extends AskedHead {
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

    /** A leaflet that does not say how much peroxide is in the tub: there may be some. */
    @ParameterizedTest
    @CsvSource(
            value = {"null, true, false", "0, false, false", "0.1, true, true"},
            nullValues = "null")
    void onMetalPeroxideThatNobodyKnowsOfRefusesThePlanAndRingsNothing(
            @Nullable String peroxide, boolean refused, boolean rings) {
        head.answers(Gates.fineBut(Metal.PRESENT));
        var glaze = Leaflet.leaflet("glaze", Kind.DEPOSIT_COLOUR).peroxide(peroxide);
        var bowl = story.mixes(g(60, glaze.typedIn()));
        var expected = List.of(ReasonCode.METAL_ON_HAIR);
        assertThat(against(bowl, Zone.OFF_SCALP)).isEqualTo(refused ? expected : List.of());
        assertThat(gatePassedBy(head.puts(bowl, offScalp(Area.LENGTHS)))).isEqualTo(rings ? expected : List.of());
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
