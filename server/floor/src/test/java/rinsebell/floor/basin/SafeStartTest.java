package rinsebell.floor.basin;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Kind;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;

/** Two basins, of which one is out of order; a rinse takes the house eight minutes, and the walk before it one. */
class SafeStartTest {
    private final Story story = Story.begins().at("09:50");
    private final Directions exact = leaflet("exact", Kind.POWDER_LIGHTENER)
            .develops(FROM_FIRST_ON, minutes(30), minutes(30))
            .typedIn();
    private final Directions early = leaflet("early", Kind.POWDER_LIGHTENER)
            .develops(FROM_FIRST_ON, minutes(20), minutes(20))
            .typedIn();

    private void oneBasinOnly() {
        story.tells(new DayEvent.BasinClosed(2));
    }

    private Head on(String clock, Directions product) {
        var head = story.at(clock).arrivesFine();
        head.lastOn(head.puts(story.mixes(g(60, product)), offScalp(Area.LENGTHS)));
        return head;
    }

    private SafeStart asked(String clock, Directions product) {
        var portions = story.at(clock).portions(g(60, product));
        return SafeStart.ofMixing(story.floor(), null, portions, at(clock));
    }

    private static Instant water(SafeStart safe) {
        return safe.turn().orElseThrow().water();
    }

    @Test
    void withNobodyElseItMayGoOnNow() {
        oneBasinOnly();
        var safe = asked("10:00", exact);
        assertThat(safe.isNow()).isTrue();
        assertThat(water(safe)).isEqualTo(at("10:30"));
    }

    /** At 10:30 somebody else must be rinsed, until 10:38: just before, and just as that is over. */
    @Test
    void itIsHeldUntilTheBasinIsFree() {
        oneBasinOnly();
        on("10:00", exact);
        var safe = asked("10:01", exact);
        assertThat(safe.isNow()).isFalse();
        assertThat(safe.start()).hasValue(at("10:08"));
        assertThat(water(safe)).isEqualTo(at("10:38"));
        assertThat(asked("10:08", exact).isNow()).isTrue();
    }

    /** What is safe now is not safe a little later: so every minute has to be asked, and none can be skipped. */
    @Test
    void laterIsNotAlwaysSafer() {
        oneBasinOnly();
        on("10:00", exact);
        assertThat(asked("10:01", early).isNow()).as("10:21 to 10:29").isTrue();
        var safe = asked("10:03", early);
        assertThat(safe.isNow()).as("10:23 to 10:31").isFalse();
        assertThat(safe.start()).hasValue(at("10:18"));
    }

    @Test
    void aSecondBasinMakesItSafe() {
        on("10:00", exact);
        assertThat(asked("10:01", exact).isNow()).isTrue();
    }

    /** Somebody is late already: a bowl that makes nobody later is not held for that. */
    @Test
    void whoIsLateAnywayHoldsNobodyElse() {
        oneBasinOnly();
        on("10:00", exact);
        on("10:00", exact);
        assertThat(asked("10:20", exact).isNow()).isTrue();
    }

    @Test
    void withoutABasinThereIsNoStart() {
        oneBasinOnly();
        story.tells(new DayEvent.BasinClosed(1));
        var safe = asked("10:00", exact);
        assertThat(safe.start()).isEmpty();
        assertThat(safe.turn()).isEmpty();
    }

    /** A bowl that is mixed already: its clock runs, and only the brush waits. */
    @Test
    void aBowlThatStandsReadyIsAskedForAsWell() {
        oneBasinOnly();
        on("10:00", exact);
        var next = story.at("10:01").arrivesFine();
        story.mixes(g(60, exact));
        var bowl = story.floor().waitingBowls().get(0);
        var safe = SafeStart.ofPuttingOn(story.floor(), next.id(), bowl, at("10:01"));
        assertThat(safe.start()).hasValue(at("10:08"));
    }
}
