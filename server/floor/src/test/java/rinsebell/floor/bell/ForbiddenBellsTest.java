package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.BellKind.FORBIDDEN_COVER;
import static rinsebell.floor.bell.BellKind.FORBIDDEN_HEAT;
import static rinsebell.floor.bell.BellKind.FORBIDDEN_MIXTURE;
import static rinsebell.floor.bell.BellKind.FORBIDDEN_ZONE;
import static rinsebell.floor.bell.BellKind.GATE_OPEN;
import static rinsebell.floor.bell.BellKind.PASSED_GATE;
import static rinsebell.floor.testing.Ringing.assertQuiet;
import static rinsebell.floor.testing.Ringing.assertRings;
import static rinsebell.floor.testing.Ringing.bell;
import static rinsebell.floor.testing.Ringing.bells;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.Scalp;
import rinsebell.floor.visit.Gate.SkinTest;

/** What was done anyway rings at once, high, until it is removed or ended. */
class ForbiddenBellsTest {
    private final Story story = Story.stocked();
    private final Head head = story.at("09:50").arrivesFine();

    ForbiddenBellsTest() {
        story.at("10:00");
    }

    private BowlId cream() {
        return story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
    }

    private BowlId powder() {
        return story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30));
    }

    @Test
    void aForbiddenCoverRingsUntilItIsRemoved() {
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:05");
        head.covers(on, Cover.FILM);
        assertRings(story.floor(), FORBIDDEN_COVER, "10:05 DUE HIGH STYLIST");
        assertThat(bell(story.floor(), FORBIDDEN_COVER).reasons())
                .extracting(Reason::code)
                .containsExactly(ReasonCode.COVER_NOT_ALLOWED);
        head.covers(on, Cover.OPEN);
        assertQuiet(story.floor(), FORBIDDEN_COVER);
    }

    @Test
    void aForbiddenHeatRingsUntilItIsOff() {
        head.puts(cream(), onScalp(Area.REGROWTH));
        head.puts(powder(), offScalp(Area.LENGTHS));
        story.at("10:05");
        head.heats(Heat.DRYER);
        assertRings(story.floor(), FORBIDDEN_HEAT, "10:05 DUE HIGH STYLIST");
        head.heatOff();
        assertQuiet(story.floor(), FORBIDDEN_HEAT);
    }

    @Test
    void aHeatThatWasOnRingsFromFirstOn() {
        head.heats(Heat.DRYER);
        story.at("10:05");
        head.puts(powder(), offScalp(Area.LENGTHS));
        assertRings(story.floor(), FORBIDDEN_HEAT, "10:05 DUE HIGH STYLIST");
    }

    @Test
    void aForbiddenZoneRingsUntilTheRinse() {
        var on = head.puts(powder(), onScalp(Area.REGROWTH));
        assertRings(story.floor(), FORBIDDEN_ZONE, "10:00 DUE HIGH STYLIST");
        story.at("10:02");
        head.wipesOff(on);
        assertQuiet(story.floor(), FORBIDDEN_ZONE);
    }

    @Test
    void aBowlOverItDoesNotHushAForbiddenZone() {
        head.puts(powder(), onScalp(Area.REGROWTH));
        story.at("10:02");
        head.puts(cream(), onScalp(Area.REGROWTH));
        assertRings(story.floor(), FORBIDDEN_ZONE, "10:00 DUE HIGH STYLIST");
    }

    @Test
    void aForbiddenMixtureRingsOnceForAllItsReasons() {
        head.puts(story.mixes(g(60, Shelf.POWDER), g(7, Shelf.PERMANENT), g(90, Shelf.DEV30)), offScalp(Area.LENGTHS));
        assertRings(story.floor(), FORBIDDEN_MIXTURE, "10:00 DUE HIGH STYLIST");
        assertThat(bell(story.floor(), FORBIDDEN_MIXTURE).reasons())
                .as("the worst speaks first")
                .extracting(Reason::code)
                .startsWith(ReasonCode.NEVER_MIXED)
                .hasSizeGreaterThan(1)
                .isSorted();
    }

    @Test
    void aPassedGateRingsAndOneAcknowledgementEndsIt() {
        head.answers(Gates.fineBut(Scalp.SORE));
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        assertRings(story.floor(), PASSED_GATE, "10:00 DUE HIGH STYLIST");
        var rings = bell(story.floor(), PASSED_GATE);
        assertThat(rings.isSeen(story.now())).isFalse();
        story.acknowledges(rings);
        assertThat(bell(story.floor(), PASSED_GATE).isSeen(story.now())).isTrue();
        head.rinses(on);
        assertQuiet(story.floor(), PASSED_GATE);
    }

    /** Whether the further answer is the worse one or not. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFurtherAnswerAtTheGateIsToBeSeenToo(boolean soreFirst) {
        var sore = new Gate(null, Scalp.SORE, null, null, null);
        var metal = new Gate(null, null, null, Metal.PRESENT, null);
        head.answers(soreFirst ? sore : metal);
        head.puts(cream(), onScalp(Area.REGROWTH));
        story.acknowledges(bell(story.floor(), PASSED_GATE));
        assertThat(bell(story.floor(), PASSED_GATE).isSeen(story.now())).isTrue();
        story.at("10:05");
        head.answers(soreFirst ? metal : sore);
        assertThat(bell(story.floor(), PASSED_GATE).isSeen(story.now())).isFalse();
        story.acknowledges(bell(story.floor(), PASSED_GATE));
        assertThat(bell(story.floor(), PASSED_GATE).isSeen(story.now())).isTrue();
        head.answers(new Gate(null, Scalp.FINE, null, null, null));
        assertThat(bell(story.floor(), PASSED_GATE).isSeen(story.now()))
                .as("what is left of it was seen")
                .isTrue();
    }

    @Test
    void aHeatThatTheNextBowlForbidsTooIsToBeSeenAgain() {
        head.puts(cream(), offScalp(Area.LENGTHS));
        head.heats(Heat.DRYER);
        story.acknowledges(bell(story.floor(), FORBIDDEN_HEAT));
        story.at("10:05");
        head.puts(powder(), offScalp(Area.ENDS));
        assertRings(story.floor(), FORBIDDEN_HEAT, "10:00 DUE HIGH STYLIST", "10:05 DUE HIGH STYLIST");
        assertThat(bell(story.floor(), FORBIDDEN_HEAT).isSeen(story.now())).isFalse();
    }

    @Test
    void eachPassedGateOfEachBowlRingsOnce() {
        head.answers(Gates.fineBut(SkinTest.NOT_DONE).over(Gates.fineBut(Scalp.SORE)));
        head.answers(Gates.reactedEarlier().over(Gates.under16()));
        head.puts(story.mixes(g(60, Shelf.TONER), g(60, Shelf.DEV10)), onScalp(Area.REGROWTH));
        assertThat(bells(story.floor(), PASSED_GATE)).hasSize(1);
    }

    @Test
    void anOpenGateRingsLowForWhatIsOn() {
        var other = story.arrives();
        assertQuiet(story.floor(), GATE_OPEN);
        story.at("10:10");
        other.puts(story.mixes(), offScalp(Area.LENGTHS));
        story.at("10:15");
        other.puts(cream(), offScalp(Area.ENDS));
        assertRings(story.floor(), GATE_OPEN, "10:10 DUE LOW STYLIST");
        other.answers(Gates.FINE);
        assertQuiet(story.floor(), GATE_OPEN);
    }

    @Test
    void whatGoesOnAScalpAfterBurningRings() {
        head.complains(Complaint.Grade.BURNING);
        story.at("10:30");
        head.puts(story.mixes(g(40, Shelf.REMOVER)), onScalp(Area.REGROWTH));
        assertRings(story.floor(), FORBIDDEN_ZONE, "10:30 DUE HIGH STYLIST");
    }

    @Test
    void anUnknownRecipeRingsNothing() {
        head.puts(story.mixes(), onScalp(Area.REGROWTH).under(Cover.FILM));
        head.heats(Heat.DRYER);
        for (var kind : new BellKind[] {FORBIDDEN_ZONE, FORBIDDEN_COVER, FORBIDDEN_HEAT, FORBIDDEN_MIXTURE}) {
            assertQuiet(story.floor(), kind);
        }
    }
}
