package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.BellKind.COVER_END;
import static rinsebell.floor.bell.BellKind.HEAT_END;
import static rinsebell.floor.bell.BellKind.LAST_ON_MISSING;
import static rinsebell.floor.bell.BellKind.LEFT_WITH_IT_ON;
import static rinsebell.floor.bell.BellKind.READY;
import static rinsebell.floor.bell.BellKind.ROUND_OVER;
import static rinsebell.floor.bell.BellKind.SCALP_AFTER_RINSE;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.assertQuiet;
import static rinsebell.floor.testing.Ringing.assertRings;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Leaflet;
import rinsebell.floor.testing.Story;
import rinsebell.floor.testing.Where;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;

class HeadBellsTest {
    private final Story story = Story.begins();
    private final Head head = story.at("09:50").arrivesFine();

    private ApplicationId puts(Leaflet leaflet, Where where) {
        story.at("10:00");
        return head.puts(story.mixes(g(60, leaflet.typedIn())), where);
    }

    private static Leaflet cream() {
        return leaflet("cream", Kind.MILD_CREAM_LIGHTENER);
    }

    private static Leaflet toner() {
        return leaflet("toner", Kind.DEPOSIT_COLOUR).develops(FROM_FIRST_ON, minutes(5), minutes(20));
    }

    @Test
    void lastOnIsMissedAfterTheApplicationTimeOfTheHouse() {
        var on = puts(cream(), offScalp(Area.LENGTHS));
        assertRings(story.floor(), LAST_ON_MISSING, "10:20 DUE LOW STYLIST");
        story.at("10:25");
        head.lastOn(on);
        assertQuiet(story.floor(), LAST_ON_MISSING);
    }

    /** Pressed at the wrong head, or really gone: either way somebody has lightener on. */
    @Test
    void whoLeavesWithSomethingOnRingsUntilItIsOff() {
        var on = puts(toner(), offScalp(Area.LENGTHS));
        story.at("10:20");
        head.leaves();
        assertRings(story.floor(), LEFT_WITH_IT_ON, "10:20 DUE HIGH EVERYONE");
        assertThat(head.visit().isOpen()).isTrue();
        story.at("10:25");
        head.rinses(on);
        assertQuiet(story.floor(), LEFT_WITH_IT_ON);
        assertThat(head.visit().isOpen()).isFalse();
    }

    @Test
    void readyRingsLowForToner() {
        var on = puts(toner(), offScalp(Area.LENGTHS));
        assertQuiet(story.floor(), READY);
        head.lastOn(on);
        assertRings(story.floor(), READY, "10:05 DUE LOW STYLIST");
        story.at("10:06");
        head.rinses(on);
        assertQuiet(story.floor(), READY);
    }

    @ParameterizedTest
    @CsvSource({"10:04:59.999, false", "10:05, true", "10:05:00.001, true"})
    void aLookEndsReadyOnceItIsReady(String looked, boolean ends) {
        var on = puts(toner(), offScalp(Area.LENGTHS));
        head.lastOn(on);
        story.at(looked);
        head.checks(on);
        if (ends) {
            assertQuiet(story.floor(), READY);
        } else {
            assertRings(story.floor(), READY, "10:05 DUE LOW STYLIST");
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void readyIsForColourAndTonerOnly(Kind kind) {
        var on = puts(leaflet("any", kind).develops(FROM_FIRST_ON, minutes(5), minutes(20)), offScalp(Area.LENGTHS));
        head.lastOn(on);
        if (kind.hasHardDevelopment()) {
            assertQuiet(story.floor(), READY);
        } else {
            assertRings(story.floor(), READY, "10:05 DUE LOW STYLIST");
        }
    }

    @ParameterizedTest
    @CsvSource({"4, false", "5, true", "6, true"})
    void readyNeverRingsWhereRinseByComesFirst(long longestOn, boolean rings) {
        var on = puts(toner().longestOn(minutes(longestOn)), offScalp(Area.LENGTHS));
        head.lastOn(on);
        if (rings) {
            assertRings(story.floor(), READY, "10:05 DUE LOW STYLIST");
        } else {
            assertQuiet(story.floor(), READY);
        }
    }

    @Test
    void heatRingsMediumAtTheEndOfItsAllowedTime() {
        puts(cream().allows(Heat.GENTLE_STEAM, minutes(15)), offScalp(Area.LENGTHS));
        story.at("10:10");
        head.heats(Heat.GENTLE_STEAM);
        assertRings(story.floor(), HEAT_END, "10:25 DUE MEDIUM STYLIST");
        story.at("10:26");
        head.heatOff();
        assertQuiet(story.floor(), HEAT_END);
    }

    @Test
    void heatThatWasOnBeforeCountsFromFirstOn() {
        head.heats(Heat.GENTLE_STEAM);
        puts(cream().allows(Heat.GENTLE_STEAM, minutes(15)), offScalp(Area.LENGTHS));
        assertRings(story.floor(), HEAT_END, "10:15 DUE MEDIUM STYLIST");
    }

    @Test
    void theShortestAllowedTimeOnTheHeadEndsTheHeat() {
        puts(cream().allows(Heat.GENTLE_STEAM, minutes(15)), offScalp(Area.LENGTHS));
        puts(toner().allows(Heat.GENTLE_STEAM, minutes(10)), offScalp(Area.ENDS));
        head.heats(Heat.GENTLE_STEAM);
        assertRings(story.floor(), HEAT_END, "10:10 DUE MEDIUM STYLIST");
    }

    @Test
    void heatWithoutAnEndRingsNone() {
        puts(cream().allows(Heat.GENTLE_STEAM), offScalp(Area.LENGTHS));
        head.heats(Heat.GENTLE_STEAM);
        assertQuiet(story.floor(), HEAT_END);
    }

    @Test
    void aCoverRingsMediumAtTheEndOfItsAllowedTime() {
        var on = puts(cream().allows(Cover.FILM, minutes(20)), offScalp(Area.LENGTHS));
        story.at("10:05");
        head.covers(on, Cover.FILM);
        assertRings(story.floor(), COVER_END, "10:25 DUE MEDIUM STYLIST");
        head.covers(on, Cover.OPEN);
        assertQuiet(story.floor(), COVER_END);
    }

    @Test
    void theScalpIsLookedAtAfterARoundOnIt() {
        var on = puts(cream(), onScalp(Area.REGROWTH));
        assertQuiet(story.floor(), SCALP_AFTER_RINSE);
        story.at("10:40");
        head.rinses(on);
        assertRings(story.floor(), SCALP_AFTER_RINSE, "10:40 DUE SILENT STYLIST", "10:45 LATE LOW STYLIST");
    }

    @ParameterizedTest
    @CsvSource({"10:39:59.999, false", "10:40, true", "10:40:00.001, true"})
    void aScalpCheckAfterTheRinseEndsIt(String looked, boolean ends) {
        var on = puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:40");
        head.rinses(on);
        story.at(looked);
        head.scalpIs(ScalpCheck.Finding.FINE);
        if (ends) {
            assertQuiet(story.floor(), SCALP_AFTER_RINSE);
        } else {
            assertRings(story.floor(), SCALP_AFTER_RINSE, "10:40 DUE SILENT STYLIST", "10:45 LATE LOW STYLIST");
        }
    }

    @Test
    void aSecondRinseDoesNotHushTheFirstThatNobodyLookedAfter() {
        var first = puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:40");
        head.rinses(first);
        var second = puts(cream(), onScalp(Area.HAIRLINE));
        story.at("10:50");
        head.rinses(second);
        assertRings(story.floor(), SCALP_AFTER_RINSE, "10:40 DUE SILENT STYLIST", "10:45 LATE LOW STYLIST");
    }

    @Test
    void noScalpIsLookedAtAfterARoundOffIt() {
        var lengths = puts(cream(), offScalp(Area.LENGTHS));
        var toned = puts(toner(), onScalp(Area.REGROWTH));
        story.at("10:40");
        head.rinses(lengths, toned);
        assertQuiet(story.floor(), SCALP_AFTER_RINSE);
    }

    @Test
    void aRoundWithoutEnoughLiftRingsLow() {
        story.at("10:40");
        head.tells(new LookEvent.LiftJudged(false));
        assertRings(story.floor(), ROUND_OVER, "10:40 DUE LOW STYLIST");
    }

    @Test
    void enoughLiftRingsNothing() {
        head.tells(new LookEvent.LiftJudged(true));
        assertQuiet(story.floor(), ROUND_OVER);
    }

    @Test
    void aRoundIsOverWithAnotherOneOrATonerOrAStop() {
        story.at("09:55");
        head.tells(new LookEvent.LiftJudged(false));
        head.tells(new LookEvent.RoundsStopped());
        assertQuiet(story.floor(), ROUND_OVER);
        head.tells(new LookEvent.LiftJudged(false));
        assertRings(story.floor(), ROUND_OVER, "09:55 DUE LOW STYLIST");
        puts(toner(), offScalp(Area.LENGTHS));
        assertQuiet(story.floor(), ROUND_OVER);
    }

    @Test
    void aClosedVisitRingsNothing() {
        var on = puts(cream().longestOn(minutes(30)).strandEvery(minutes(5), null), onScalp(Area.REGROWTH));
        story.at("10:10");
        head.rinses(on);
        head.tells(new LookEvent.LiftJudged(false));
        assertRings(story.floor(), ROUND_OVER, "10:10 DUE LOW STYLIST");
        head.leaves();
        assertThat(story.floor().bells()).isEmpty();
    }
}
