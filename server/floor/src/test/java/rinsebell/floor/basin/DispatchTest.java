package rinsebell.floor.basin;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.BellKind.BASINS_CLASH;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.assertQuiet;
import static rinsebell.floor.testing.Ringing.assertRings;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.Place;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.StayEvent;

/** Two basins; a rinse takes the house eight minutes. */
class DispatchTest {
    private final Story story = Story.begins().at("09:50");

    /** Somebody whose hair may be rinsed from an instant, and must be by another. */
    private Head mayFromMustBy(String ready, String rinseBy) {
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER)
                .develops(
                        FROM_FIRST_ON,
                        Duration.between(at("10:00"), at(ready)),
                        Duration.between(at("10:00"), at(rinseBy)));
        var head = story.at("09:55").arrivesFine();
        story.at("10:00");
        head.lastOn(head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS)));
        return head;
    }

    private Plan plan() {
        return new Dispatch().plan(Stations.ofFacts(story.floor()));
    }

    private static List<Instant> mustStart(Plan plan) {
        var must = plan.mustStart();
        return plan.turns().stream()
                .map(turn -> Objects.requireNonNull(must.get(turn.job().anchor())))
                .toList();
    }

    private void oneBasinOnly() {
        story.tells(new DayEvent.BasinClosed(2));
    }

    @ParameterizedTest
    @CsvSource({"10:47:59.999, true", "10:48, false", "10:48:00.001, false"})
    void withOneBasinTwoHeadsAreARinseApart(String second, boolean clash) {
        oneBasinOnly();
        mayFromMustBy("10:40", "10:40");
        mayFromMustBy("10:40", second);
        if (clash) {
            assertRings(story.floor(), BASINS_CLASH, "10:00 DUE MEDIUM DESK");
        } else {
            assertQuiet(story.floor(), BASINS_CLASH);
        }
    }

    @Test
    void withTwoBasinsTwoHeadsFitAtOnceAndThreeDoNot() {
        mayFromMustBy("10:40", "10:40");
        mayFromMustBy("10:40", "10:40");
        assertQuiet(story.floor(), BASINS_CLASH);
        mayFromMustBy("10:40", "10:40");
        assertRings(story.floor(), BASINS_CLASH, "10:00 DUE MEDIUM DESK");
    }

    @Test
    void whoMayGoEarlierIsBroughtForward() {
        oneBasinOnly();
        var first = mayFromMustBy("10:30", "10:40");
        var second = mayFromMustBy("10:40", "10:45");
        assertQuiet(story.floor(), BASINS_CLASH);
        var plan = plan();
        assertThat(plan.turns()).extracting(Turn::visit).containsExactly(first.id(), second.id());
        assertThat(plan.turns()).extracting(Turn::water).containsExactly(at("10:37"), at("10:45"));
        assertThat(plan.turns()).extracting(Turn::isBroughtForward).containsExactly(true, false);
        assertThat(mustStart(plan)).containsExactly(at("10:37"), at("10:45"));
    }

    @Test
    void aChainIsBroughtForwardFromItsEnd() {
        oneBasinOnly();
        mayFromMustBy("10:10", "10:40");
        mayFromMustBy("10:10", "10:41");
        mayFromMustBy("10:10", "10:42");
        assertThat(mustStart(plan())).containsExactly(at("10:26"), at("10:34"), at("10:42"));
    }

    @Test
    void theEarliestRinseByGoesFirstWhoeverCameFirst() {
        var later = mayFromMustBy("10:30", "10:50");
        var sooner = mayFromMustBy("10:30", "10:40");
        assertThat(plan().turns()).extracting(Turn::visit).containsExactly(sooner.id(), later.id());
    }

    @Test
    void whoIsAtABasinHasHadTheirTurn() {
        oneBasinOnly();
        var first = mayFromMustBy("10:30", "10:40");
        mayFromMustBy("10:40", "10:40");
        story.at("10:32").tells(first, new StayEvent.Moved(Place.basin(1)));
        assertQuiet(story.floor(), BASINS_CLASH);
        assertThat(plan().turns()).hasSize(1);
    }

    // The basin is taken from 10:00 until 10:08.
    @ParameterizedTest
    @CsvSource({"10:03, true", "10:07:59.999, true", "10:08, false", "10:08:00.001, false"})
    void aBasinThatIsTakenServesNobodyElseBefore(String rinseBy, boolean clash) {
        oneBasinOnly();
        var there = story.at("09:52").arrivesFine();
        mayFromMustBy("10:01", rinseBy);
        story.at("10:00").tells(there, new StayEvent.Moved(Place.basin(1)));
        if (clash) {
            assertRings(story.floor(), BASINS_CLASH, "10:00 DUE MEDIUM DESK");
        } else {
            assertQuiet(story.floor(), BASINS_CLASH);
        }
        story.tells(new DayEvent.BasinOpened(2));
        assertQuiet(story.floor(), BASINS_CLASH);
    }

    @Test
    void whatDevelopsAtTheBasinTakesItUntilItIsRinsed() {
        oneBasinOnly();
        var there = mayFromMustBy("10:20", "10:30");
        mayFromMustBy("10:01", "10:27");
        story.at("10:05").tells(there, new StayEvent.Moved(Place.basin(1)));
        assertRings(story.floor(), BASINS_CLASH, "10:05 DUE MEDIUM DESK");
        story.at("10:12");
        there.rinses(there.visit().onHair().get(0).id());
        assertQuiet(story.floor(), BASINS_CLASH);
    }

    @Test
    void withEveryBasinOutOfOrderNobodyCanBeRinsedInTime() {
        mayFromMustBy("10:30", "10:40");
        story.at("10:10").tells(new DayEvent.BasinClosed(1));
        assertQuiet(story.floor(), BASINS_CLASH);
        story.at("10:12").tells(new DayEvent.BasinClosed(2));
        assertRings(story.floor(), BASINS_CLASH, "10:12 DUE MEDIUM DESK");
    }

    @Test
    void aClashIsKnownSinceTheLastFactThatMadeIt() {
        mayFromMustBy("10:40", "10:40");
        var second = mayFromMustBy("10:40", "10:42");
        story.at("10:20").tells(new DayEvent.BasinClosed(2));
        assertRings(story.floor(), BASINS_CLASH, "10:20 DUE MEDIUM DESK");
        story.tells(new DayEvent.BasinOpened(2));
        story.at("10:25");
        second.saysRinse(second.visit().onHair().get(0).id());
        assertQuiet(story.floor(), BASINS_CLASH);
        mayFromMustBy("10:26", "10:26");
        mayFromMustBy("10:26", "10:26");
        assertRings(story.floor(), BASINS_CLASH, "10:25 DUE MEDIUM DESK");
    }

    @Test
    void aHeadThatMustGoBeforeItIsReadyIsNoClashOfBasins() {
        oneBasinOnly();
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER)
                .develops(FROM_FIRST_ON, minutes(45), minutes(60))
                .longestOn(minutes(30));
        var head = story.at("09:55").arrivesFine();
        story.at("10:00");
        head.lastOn(head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS)));
        assertQuiet(story.floor(), BASINS_CLASH);
    }

    @Test
    void aPlanThatFitsEndsTheClash() {
        oneBasinOnly();
        mayFromMustBy("10:40", "10:40");
        mayFromMustBy("10:40", "10:40");
        assertRings(story.floor(), BASINS_CLASH, "10:00 DUE MEDIUM DESK");
        story.tells(new DayEvent.BasinOpened(2));
        assertQuiet(story.floor(), BASINS_CLASH);
    }
}
