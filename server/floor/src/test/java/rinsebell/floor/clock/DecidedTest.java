package rinsebell.floor.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.product.Kind.DEPOSIT_COLOUR;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.product.Develops.Counted;
import rinsebell.floor.product.Kind;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;

/** The terms of "rinse by" that people give: a plan, a decision, discomfort. */
class DecidedTest extends OneBowlOn {
    private static final Duration MILLI = Duration.ofMillis(1);

    @ParameterizedTest
    @CsvSource({"FROM_MIXING, 10:30", "FROM_FIRST_ON, 10:35", "FROM_LAST_ON, 10:45"})
    void aPlannedTimeIsSoftAndCountedAsDevelopmentIs(Counted counted, String planned) {
        var on = on(powder().develops(counted, minutes(20), minutes(40)), minutes(30));
        assertThat(on.timing().rinseBy()).contains(new Limit(Limit.Why.PLANNED, at(planned), false));
    }

    @Test
    void aPlannedTimeWithoutADevelopmentCountsFromFirstOn() {
        assertThat(on(powder(), minutes(30)).timing().rinseBy())
                .contains(new Limit(Limit.Why.PLANNED, at("10:35"), false));
    }

    static Stream<Object[]> looksAroundThePlannedTime() {
        return Stream.of(
                new Object[] {"just below", minutes(10).minus(MILLI), true},
                new Object[] {"at", minutes(10), true},
                new Object[] {"just above", minutes(10).plus(MILLI), false});
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("looksAroundThePlannedTime")
    void lookAgainBeyondThePlannedTimePassesIt(String row, Duration again, boolean stands) {
        // Planned for 10:35; at 10:25 somebody says "look again in ...".
        var on = on(powder(), minutes(30));
        story.at("10:25");
        on.head().looksAgain(on.application(), again);
        assertThat(on.limit(Limit.Why.PLANNED) != null).as(row).isEqualTo(stands);
    }

    @Test
    void aPlannedTimeThatWasPassedStaysPassed() {
        var on = on(powder(), minutes(30));
        story.at("10:30");
        on.head().looksAgain(on.application(), minutes(10));
        story.at("10:32");
        on.head().checks(on.application());
        assertThat(on.limit(Limit.Why.PLANNED)).isNull();
    }

    @Test
    void aNewPlannedTimeReplacesTheOld() {
        var on = on(powder(), minutes(30));
        on.head().plans(on.application(), minutes(25));
        assertThat(on.limit(Limit.Why.PLANNED)).isEqualTo(new Limit(Limit.Why.PLANNED, at("10:30"), false));
        on.head().plans(on.application(), null);
        assertThat(on.limit(Limit.Why.PLANNED)).isNull();
    }

    @ParameterizedTest
    @CsvSource({"LENGTHS, 10:31", "FOILS_ALL, 10:35", "FOILS_LEFT, 10:35"})
    void rinseDecidedCountsWithTheWorkingTime(Area area, String rinseBy) {
        // The house gives one minute for the walk, and four more where foils come out first.
        var head = story.at("09:50").arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, powder().typedIn()));
        story.at("10:05");
        var application = head.puts(bowl, offScalp(area));
        story.at("10:30");
        head.saysRinse(application);
        assertThat(head.timing(application).rinseBy()).contains(new Limit(Limit.Why.DECIDED, at(rinseBy), true));
        assertThat(head.timing(application).ready())
                .as("the check says so earlier")
                .contains(at("10:30"));
    }

    @Test
    void onlyTheLatestCheckDecides() {
        var on = on(powder());
        story.at("10:30");
        on.head().saysRinse(on.application());
        story.at("10:32");
        on.head().looksAgain(on.application(), minutes(5));
        assertThat(on.limit(Limit.Why.DECIDED)).isNull();
    }

    @ParameterizedTest
    @CsvSource({"HIGH_LIFT_COLOUR, true", "PERMANENT_COLOUR, false", "DEPOSIT_COLOUR, false"})
    void aDecisionToRinseIsSoftForColour(Kind kind, boolean hard) {
        var on = on(leaflet("any", kind));
        story.at("10:30");
        on.head().saysRinse(on.application());
        assertThat(on.timing().rinseBy()).contains(new Limit(Limit.Why.DECIDED, at("10:31"), hard));
    }

    @ParameterizedTest
    @CsvSource({"10:04:59.999, false", "10:05, true", "10:05:00.001, true"})
    void aScalpCheckThatSaysRinseDecidesForWhatIsOn(String looked, boolean decides) {
        var on = on(powder());
        story.at(looked);
        on.head().scalpIs(ScalpCheck.Finding.PINK, CheckDecision.RINSE);
        assertThat(on.limit(Limit.Why.DECIDED) != null).isEqualTo(decides);
    }

    @ParameterizedTest
    @CsvSource({"10:04:59.999, false", "10:05, true", "10:05:00.001, true"})
    void severeDiscomfortIsAHardLimitAtItsInstantForWhatIsOn(String felt, boolean counts) {
        var on = on(leaflet("toner", DEPOSIT_COLOUR));
        story.at(felt);
        on.head().complains(Complaint.Grade.BURNING);
        var expected = new Limit(Limit.Why.DISCOMFORT, at(felt), true);
        assertThat(on.limit(Limit.Why.DISCOMFORT)).isEqualTo(counts ? expected : null);
    }

    @ParameterizedTest
    @CsvSource({"TINGLING, false", "BURNING, true", "HOT_FOIL, true"})
    void tinglingAloneEndsNothing(Complaint.Grade grade, boolean counts) {
        var on = on(powder());
        story.at("10:30");
        on.head().complains(grade);
        assertThat(on.limit(Limit.Why.DISCOMFORT) != null).isEqualTo(counts);
    }
}
