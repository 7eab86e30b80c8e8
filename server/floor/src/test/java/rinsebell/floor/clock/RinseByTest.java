package rinsebell.floor.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.product.Develops.Counted.FROM_LAST_ON;
import static rinsebell.floor.product.Develops.Counted.FROM_MIXING;
import static rinsebell.floor.product.Kind.DEPOSIT_COLOUR;
import static rinsebell.floor.product.Kind.HIGH_LIFT_COLOUR;
import static rinsebell.floor.product.Kind.PERMANENT_COLOUR;
import static rinsebell.floor.product.Kind.POWDER_LIGHTENER;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.product.Develops.Counted;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.testing.Leaflet;
import rinsebell.floor.visit.Area;

/** Every term of "rinse by" that directions give, one at a time and then against each other. */
class RinseByTest extends OneBowlOn {
    @Test
    void usableForThatMeansRinseIsAHardLimitFromMixing() {
        var timing = on(powder().usableThenRinse(minutes(60))).timing();
        assertThat(timing.limits()).containsExactly(new Limit(Limit.Why.USABLE_END, at("11:00"), true));
        assertThat(timing.usableUntil()).contains(at("11:00"));
    }

    @Test
    void usableForThatMeansPutNoMoreOnEndsNothing() {
        var timing = on(leaflet("permanent", PERMANENT_COLOUR).usableThenPutNoMoreOn(minutes(30)))
                .timing();
        assertThat(timing.limits()).isEmpty();
        assertThat(timing.usableUntil()).contains(at("10:30"));
    }

    @ParameterizedTest
    @CsvSource({"FROM_MIXING, 10:20, 10:40", "FROM_FIRST_ON, 10:25, 10:45", "FROM_LAST_ON, 10:35, 10:55"})
    void developmentCountsFromWhereTheLeafletSays(Counted counted, String readyFrom, String rinseBy) {
        var timing = on(powder().develops(counted, minutes(20), minutes(40))).timing();
        assertThat(timing.ready()).contains(at(readyFrom));
        assertThat(timing.limits()).containsExactly(new Limit(Limit.Why.DEVELOPED, at(rinseBy), true));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void theEndOfDevelopmentIsHardForLightenerAndHighLiftOnly(Kind kind) {
        var hard = List.of(
                Kind.MILD_CREAM_LIGHTENER, Kind.STRONG_CREAM_LIGHTENER, Kind.POWDER_LIGHTENER, Kind.HIGH_LIFT_COLOUR);
        var timing = on(leaflet("any", kind).develops(FROM_MIXING, minutes(20), minutes(40)))
                .timing();
        assertThat(timing.rinseBy()).contains(new Limit(Limit.Why.DEVELOPED, at("10:40"), hard.contains(kind)));
    }

    @ParameterizedTest
    @CsvSource({"FROM_MIXING, 10:40", "FROM_FIRST_ON, 10:45", "FROM_LAST_ON, 11:05"})
    void untilLastOnIsRecordedTheApplicationTimeOfTheHouseStandsForIt(Counted counted, String rinseBy) {
        // The house allows 20 minutes from first-on for putting a bowl on.
        var leaflet = powder().develops(counted, minutes(20), minutes(40));
        var head = story.at("09:50").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, leaflet.typedIn()));
        story.at("10:05");
        var timing = head.timing(head.puts(bowl, offScalp(Area.LENGTHS)));
        assertThat(timing.rinseBy()).contains(new Limit(Limit.Why.DEVELOPED, at(rinseBy), true));
        assertThat(timing.ready()).as("ready-from stays empty").isEmpty();
    }

    @Test
    void longestOnCountsFromFirstOn() {
        var timing = on(leaflet("toner", DEPOSIT_COLOUR).longestOn(minutes(50))).timing();
        assertThat(timing.limits()).containsExactly(new Limit(Limit.Why.LONGEST_ON, at("10:55"), true));
    }

    @Test
    void longestOnOfALaterBowlCountsFromTheSectionsFirst() {
        var first = on(powder().longestOn(minutes(50)));
        var fresh =
                story.at("10:30").mixes(g(60, powder().longestOn(minutes(45)).typedIn()));
        story.at("10:35");
        var second = first.head().puts(fresh, offScalp(Area.LENGTHS));
        assertThat(first.head().timing(second).rinseBy()).contains(new Limit(Limit.Why.LONGEST_ON, at("10:50"), true));
        assertThat(first.head().timing().limits())
                .as("the covered bowl's terms stay on its section")
                .containsExactly(
                        new Limit(Limit.Why.LONGEST_ON, at("10:50"), true),
                        new Limit(Limit.Why.LONGEST_ON, at("10:55"), true));
    }

    @Test
    void longestOnStartsAfreshAfterARinse() {
        var first = on(powder().longestOn(minutes(50)));
        story.at("10:30");
        first.head().rinses(first.application());
        var fresh =
                story.at("10:35").mixes(g(60, powder().longestOn(minutes(50)).typedIn()));
        story.at("10:40");
        var second = first.head().puts(fresh, offScalp(Area.LENGTHS));
        assertThat(first.head().timing(second).rinseBy()).contains(new Limit(Limit.Why.LONGEST_ON, at("11:30"), true));
        assertThat(first.head().timing().timings()).hasSize(1);
    }

    /** Wiping off is no rinse: what was on since 10:05 counts on, until water was on. */
    @ParameterizedTest
    @CsvSource({"true, 11:30", "false, 10:55"})
    void longestOnCountsOnAfterWipingOff(boolean rinsed, String rinseBy) {
        var first = on(powder().longestOn(minutes(50)));
        var bowl = story.mixes(g(60, powder().longestOn(minutes(50)).typedIn()));
        story.at("10:20");
        first.head().wipesOff(first.application());
        story.at("10:22");
        var second = first.head().puts(bowl, offScalp(Area.LENGTHS));
        story.at("10:30");
        if (rinsed) {
            first.head().rinses(second);
        } else {
            first.head().wipesOff(second);
        }
        story.at("10:40");
        var third = first.head().puts(bowl, offScalp(Area.LENGTHS));
        assertThat(first.head().timing(third).rinseBy()).contains(new Limit(Limit.Why.LONGEST_ON, at(rinseBy), true));
    }

    @Test
    void longestOnOfAnotherSectionDoesNotCount() {
        var first = on(powder().longestOn(minutes(50)));
        var fresh =
                story.at("10:30").mixes(g(60, powder().longestOn(minutes(50)).typedIn()));
        story.at("10:35");
        var second = first.head().puts(fresh, offScalp(Area.ENDS));
        assertThat(first.head().timing(second).rinseBy()).contains(new Limit(Limit.Why.LONGEST_ON, at("11:25"), true));
    }

    @ParameterizedTest
    @CsvSource({"40, 10:45", "50, 10:55", "60, 10:55"})
    void thePolicyOfTheHouseShortensLongestOnAndNeverLengthensIt(long house, String rinseBy) {
        var policy = Policy.DEFAULT;
        story.policy(new Policy(
                policy.applying(),
                policy.working(),
                policy.bowl(),
                policy.checks(),
                policy.ringing(),
                policy.skinTest(),
                Map.of(POWDER_LIGHTENER, minutes(house)),
                policy.weighingSlackGrams(),
                policy.keeping()));
        assertThat(on(powder().longestOn(minutes(50))).limit(Limit.Why.LONGEST_ON))
                .isEqualTo(new Limit(Limit.Why.LONGEST_ON, at(rinseBy), true));
    }

    static Stream<Object[]> earliestWins() {
        return Stream.of(
                new Object[] {powder().usableThenRinse(minutes(59)).longestOn(minutes(55)), Limit.Why.USABLE_END},
                new Object[] {powder().usableThenRinse(minutes(60)).longestOn(minutes(55)), Limit.Why.USABLE_END},
                new Object[] {powder().usableThenRinse(minutes(61)).longestOn(minutes(55)), Limit.Why.LONGEST_ON},
                new Object[] {
                    powder().usableThenRinse(minutes(60)).develops(FROM_MIXING, minutes(20), minutes(59)),
                    Limit.Why.DEVELOPED
                },
                new Object[] {
                    powder().longestOn(minutes(50)).develops(FROM_LAST_ON, minutes(20), minutes(41)),
                    Limit.Why.LONGEST_ON
                });
    }

    @ParameterizedTest
    @MethodSource
    void earliestWins(Leaflet leaflet, Limit.Why why) {
        assertThat(on(leaflet).timing().rinseBy().map(Limit::why)).contains(why);
    }

    @Test
    void ofTwoAtOnceTheHardOneComesFirst() {
        var on = on(leaflet("toner", DEPOSIT_COLOUR).longestOn(minutes(30)), minutes(30));
        assertThat(on.timing().rinseBy()).contains(new Limit(Limit.Why.LONGEST_ON, at("10:35"), true));
    }

    @Test
    void withoutAnyTermThereIsNoEnd() {
        assertThat(on(powder()).timing().limits()).isEmpty();
        assertThat(on(powder()).timing().ready()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"44, true", "45, false", "46, false"})
    void rinseByBeforeReadyFromWinsAndIsSaid(long longestOn, boolean tooLate) {
        // Ready from 10:50, by a leaflet that counts from first-on.
        var on = on(powder().develops(FROM_FIRST_ON, minutes(45), minutes(60)).longestOn(minutes(longestOn)));
        assertThat(on.timing().isReadyTooLate()).isEqualTo(tooLate);
        assertThat(on.timing().rinseBy().map(Limit::at)).contains(at("10:05").plus(minutes(longestOn)));
    }

    @Test
    void theStrictestOfAMixtureCounts() {
        var lift = leaflet("high lift", HIGH_LIFT_COLOUR)
                .develops(FROM_FIRST_ON, minutes(45), minutes(60))
                .usableThenPutNoMoreOn(minutes(45));
        var tone = leaflet("permanent", PERMANENT_COLOUR)
                .develops(FROM_LAST_ON, minutes(30), minutes(40))
                .usableThenPutNoMoreOn(minutes(30));
        var head = story.at("09:50").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, lift.typedIn()), g(7, tone.typedIn()));
        story.at("10:05");
        var application = head.puts(bowl, offScalp(Area.LENGTHS));
        story.at("10:15");
        head.lastOn(application);
        var timing = head.timing(application);
        assertThat(timing.ready()).contains(at("10:50"));
        assertThat(timing.rinseBy()).contains(new Limit(Limit.Why.DEVELOPED, at("10:55"), true));
        assertThat(timing.usableUntil()).contains(at("10:30"));
    }

    @Test
    void theEditionInForceAtMixingCounts() {
        var old = powder().longestOn(minutes(50)).typedIn();
        var head = story.at("09:50").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, old));
        story.at("10:02").revises(old, powder().longestOn(minutes(20)).typedIn());
        story.at("10:05");
        var before = head.puts(bowl, offScalp(Area.LENGTHS));
        assertThat(head.timing(before).rinseBy()).contains(new Limit(Limit.Why.LONGEST_ON, at("10:55"), true));
        var after = head.puts(story.mixes(g(60, old)), offScalp(Area.ENDS));
        assertThat(head.timing(after).rinseBy()).contains(new Limit(Limit.Why.LONGEST_ON, at("10:25"), true));
    }

    @Test
    void anUnknownRecipeCountsTheShortestTimesOfTheHouseFromTenMinutesBefore() {
        story.product(
                powder().usableThenRinse(minutes(60)).longestOn(minutes(50)).typedIn());
        story.product(leaflet("toner", DEPOSIT_COLOUR)
                .usableThenPutNoMoreOn(minutes(30))
                .develops(FROM_LAST_ON, minutes(5), minutes(20))
                .typedIn());
        var head = story.at("09:50").arrivesFine();
        story.at("10:00");
        var bowl = story.mixes();
        story.at("10:10");
        var application = head.puts(bowl, onScalp(Area.REGROWTH));
        assertThat(head.timing(application).limits())
                .containsExactly(
                        new Limit(Limit.Why.DEVELOPED, at("10:20"), true),
                        new Limit(Limit.Why.USABLE_END, at("10:30"), true),
                        new Limit(Limit.Why.LONGEST_ON, at("11:00"), true));
        story.at("10:12");
        story.fills(
                bowl,
                g(
                        60,
                        powder().usableThenRinse(minutes(60))
                                .longestOn(minutes(50))
                                .typedIn()));
        assertThat(head.timing(application).limits())
                .as("once it is filled in, its own directions count")
                .containsExactly(
                        new Limit(Limit.Why.USABLE_END, at("11:00"), true),
                        new Limit(Limit.Why.LONGEST_ON, at("11:00"), true));
    }

    @Test
    void aDividedBowlKeepsItsMixingTime() {
        var head = story.at("09:50").arrivesFine();
        var bowl = story.at("10:00")
                .mixes(g(60, powder().usableThenRinse(minutes(60)).typedIn()));
        var part = story.at("10:10").divides(bowl);
        story.at("10:12");
        assertThat(head.timing(head.puts(part, offScalp(Area.ENDS))).rinseBy())
                .contains(new Limit(Limit.Why.USABLE_END, at("11:00"), true));
    }
}
