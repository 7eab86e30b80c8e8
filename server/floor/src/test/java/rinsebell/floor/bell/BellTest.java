package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static rinsebell.floor.bell.BellKind.RINSE;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.bell;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.product.Kind;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.testing.Where;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;

/** Seen and unseen. The rinse is soon at 10:34, begins at 10:39, is due at 10:40, past at 10:41. */
class BellTest {
    private final Story story = Story.begins();
    private final Head head = story.at("09:50").arrivesFine();
    private ApplicationId on = new ApplicationId(0);

    @BeforeEach
    void putOnAtTen() {
        story.at("10:00");
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).longestOn(minutes(40));
        on = head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS));
        head.lastOn(on);
    }

    private boolean isSeen(String clock) {
        return bell(story.floor(), RINSE).isSeen(at(clock));
    }

    @Test
    void nothingIsSeenBeforeSomebodySawIt() {
        assertThat(isSeen("10:30")).isFalse();
        assertThat(isSeen("10:34")).isFalse();
        assertThat(isSeen("10:41")).isFalse();
    }

    @Test
    void whatIsSeenStaysSeenUntilItsNextStage() {
        story.at("10:39");
        story.acknowledges(bell(story.floor(), RINSE));
        assertThat(isSeen("10:39")).isTrue();
        assertThat(isSeen("10:39:59.999")).isTrue();
        assertThat(isSeen("10:40")).isFalse();
        assertThat(isSeen("10:41")).isFalse();
    }

    @Test
    void theStageForEveryoneIsToBeSeenAgain() {
        story.at("10:40");
        story.acknowledges(bell(story.floor(), RINSE));
        assertThat(isSeen("10:40:59.999")).isTrue();
        assertThat(isSeen("10:41")).isFalse();
        story.at("10:41");
        story.acknowledges(bell(story.floor(), RINSE));
        assertThat(isSeen("10:41")).isTrue();
    }

    /** The house's two minutes of a high bell; it is over when the hair is rinsed, and not before. */
    @Test
    void whatWasSeenAndNotDoneRingsAgain() {
        story.at("10:41");
        story.acknowledges(bell(story.floor(), RINSE));
        assertThat(isSeen("10:42:59.999")).isTrue();
        assertThat(isSeen("10:43")).isFalse();
        story.at("10:44");
        story.acknowledges(bell(story.floor(), RINSE));
        assertThat(isSeen("10:45:59.999")).isTrue();
        assertThat(isSeen("10:46")).isFalse();
    }

    // A look at a strand is due at 10:10, medium at 10:12, high at 10:15.
    @ParameterizedTest
    @CsvSource({
        "10:10, 10:12, NORMAL",
        "10:11:59.999, 10:12, NORMAL",
        "10:12, 10:15, ACKNOWLEDGED",
        "10:14:59.999, 10:15, ACKNOWLEDGED"
    })
    void aStageThatRingsLouderIsToBeSeenAgain(String seen, String louder, AlarmState before) {
        story.at("10:00");
        var cream = leaflet("cream", Kind.MILD_CREAM_LIGHTENER).strandEvery(minutes(10), null);
        head.lastOn(head.puts(story.mixes(g(60, cream.typedIn())), offScalp(Area.ENDS)));
        story.at(seen);
        story.acknowledges(bell(story.floor(), BellKind.STRAND_CHECK));
        var check = bell(story.floor(), BellKind.STRAND_CHECK);
        assertThat(check.state(at(louder).minusMillis(1))).isEqualTo(before);
        assertThat(check.state(at(louder))).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(check.state(at(louder).plusMillis(1))).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    // Seen at 10:39 as "work begins"; then first-on is put right. What begins after that nobody has seen yet.
    @ParameterizedTest
    @CsvSource({
        "09:59, 10:39, true",
        "09:58, 10:39, true",
        "09:59:30, 10:39, false",
        "10:00:30, 10:39:29.999, false",
        "10:00:30, 10:39:30, true",
        "10:20, 11:00, true"
    })
    void aSetBackKeepsWhatWasSeenAndHushesNothingFurther(String firstOn, String now, boolean rings) {
        story.at("10:39");
        story.acknowledges(bell(story.floor(), RINSE));
        story.setsBack(on.value(), firstOn);
        assertThat(bell(story.floor(), RINSE).isRinging(at(now))).isEqualTo(rings);
    }

    @Test
    void aSetBackKeepsASeenStage() {
        story.at("10:39");
        story.acknowledges(bell(story.floor(), RINSE));
        story.setsBack(on.value(), "09:59:30");
        assertThat(isSeen("10:39")).isTrue();
        assertThat(isSeen("10:39:29.999")).isTrue();
        assertThat(isSeen("10:39:30")).isFalse();
    }

    /** The planned time was seen; a look at the strand says to wait, so that work begins at 10:44 and ends at 10:45. */
    @ParameterizedTest
    @ValueSource(strings = {"10:44", "10:44:59.999", "10:45", "10:45:00.001"})
    void aRinseThatIsPutOffRingsAgainWhenItIsDue(String due) {
        var toned = tones(45, offScalp(Area.ENDS).planned(minutes(30)));
        story.at("10:30");
        story.acknowledges(bell(story.floor(), RINSE));
        assertThat(isSeen("10:30")).isTrue();
        head.looksAgain(toned, minutes(10));
        assertThat(isSeen(due)).isFalse();
    }

    @Test
    void whatIsLeftAfterAPartOfTheHeadWasRinsedRingsAgainWhenItIsDue() {
        tones(45, offScalp(Area.ENDS));
        var first = tones(20, offScalp(Area.HAIRLINE));
        story.at("10:20");
        story.acknowledges(bell(story.floor(), RINSE));
        assertThat(isSeen("10:20")).isTrue();
        head.rinses(first);
        assertThat(isSeen("10:45")).isFalse();
    }

    /** Instead of the powder: a toner whose rinse is due after so many minutes, softly. */
    private ApplicationId tones(long to, Where where) {
        story.withdraws(on.value() + 1);
        story.withdraws(on.value());
        story.at("10:00");
        var toner = leaflet("toner", Kind.DEPOSIT_COLOUR).develops(FROM_FIRST_ON, minutes(5), minutes(to));
        return head.puts(story.mixes(g(60, toner.typedIn())), where);
    }

    @Test
    void whatItDoesNextIsKnown() {
        var rinse = bell(story.floor(), RINSE);
        assertThat(rinse.nextAfter(at("10:33:59.999"))).contains(at("10:34"));
        assertThat(rinse.nextAfter(at("10:34"))).contains(at("10:39"));
        assertThat(rinse.nextAfter(at("10:41"))).isEmpty();
        assertThat(rinse.since()).isEqualTo(at("10:39"));
        assertThat(new Turns(story.floor().bells()).after(at("10:00"))).contains(at("10:34"));
        assertThat(new Turns(List.of()).after(at("10:00"))).isEmpty();
    }

    @Test
    void aBellWithoutAStageIsABug() {
        var key = new BellKey(RINSE, 1, 2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bell.alone(key, null, List.of(), List.of()))
                .withMessageContaining("RINSE");
    }
}
