package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.ReasonCode.BELL_NOT_RINGING;
import static rinsebell.floor.ReasonCode.BELL_TOO_HIGH;
import static rinsebell.floor.ReasonCode.SHELVED_TOO_LONG;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.bells;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.BellShelved;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.AlarmState;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.product.Kind;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;

/** Two heads of one stylist, looked at every ten minutes since 10:00 and 10:01: a round that is late at 10:13, high at 10:16. */
class ShelveTest {
    private final Story story = Story.begins();
    private Desk desk = Desk.after(story);

    @BeforeEach
    void twoHeads() {
        lightens(story.at("09:50").arrivesFine(), "10:00");
        lightens(story.at("09:50").arrivesFine(), "10:01");
        desk = Desk.after(story);
    }

    private void lightens(Head head, String clock) {
        story.at(clock);
        var cream = leaflet("cream", Kind.MILD_CREAM_LIGHTENER).strandEvery(minutes(10), null);
        head.lastOn(head.puts(story.mixes(g(60, cream.typedIn())), offScalp(Area.ENDS)));
    }

    private List<Bell> checks() {
        return bells(desk.floor(), BellKind.STRAND_CHECK);
    }

    private Shelve shelve(Duration span) {
        return new Shelve(checks().get(0).key(), span, BellShelved.Why.HANDS_FULL, null);
    }

    private List<AlarmState> states() {
        return checks().stream().map(bell -> bell.state(desk.now())).toList();
    }

    @Test
    void aRoundIsShelvedAsOne() {
        desk.at("10:13");
        assertThat(states()).containsOnly(AlarmState.UNACKNOWLEDGED);
        assertThat(Desk.events(desk.plans(shelve(minutes(2))))).hasSize(2).allMatch(BellShelved.class::isInstance);
        assertThat(states()).containsOnly(AlarmState.SHELVED);
        desk.at("10:14:59.999");
        assertThat(states()).containsOnly(AlarmState.SHELVED);
        desk.at("10:15");
        assertThat(states()).containsOnly(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void aRoundIsSeenAsOne() {
        desk.at("10:13");
        assertThat(Desk.events(desk.plans(new Acknowledge(checks().get(1).key(), null))))
                .hasSize(2)
                .allMatch(BellAcknowledged.class::isInstance);
        assertThat(states()).containsOnly(AlarmState.ACKNOWLEDGED);
    }

    static Stream<Object[]> refused() {
        return Stream.of(
                new Object[] {"10:09:59.999", minutes(1), List.of(BELL_NOT_RINGING)},
                new Object[] {"10:10", minutes(1), List.of(BELL_NOT_RINGING)},
                new Object[] {"10:13", minutes(5), List.of()},
                new Object[] {"10:13", minutes(5).plusMillis(1), List.of(SHELVED_TOO_LONG)},
                new Object[] {"10:15:59.999", minutes(1), List.of()},
                new Object[] {"10:16", minutes(1), List.of(BELL_TOO_HIGH)},
                new Object[] {"10:16", minutes(6), List.of(BELL_TOO_HIGH, SHELVED_TOO_LONG)});
    }

    @ParameterizedTest
    @MethodSource
    void refused(String clock, Duration span, List<ReasonCode> reasons) {
        assertThat(Desk.refusal(desk.at(clock).plans(shelve(span)))).isEqualTo(reasons);
    }
}
