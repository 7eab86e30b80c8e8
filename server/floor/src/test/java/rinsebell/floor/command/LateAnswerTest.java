package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.BellKind.RINSE;
import static rinsebell.floor.testing.Ringing.bell;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rinsebell.floor.Asked;
import rinsebell.floor.BellShelved;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;

/**
 * What somebody said to a bell on a device that had lost the server is about what it rang for then. What it has come to
 * meanwhile nobody has heard.
 */
class LateAnswerTest {
    private final Story story = Story.stocked();
    private final Bell rinse;

    LateAnswerTest() {
        var head = story.at("10:00").arrivesFine();
        var on = head.puts(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30)), offScalp(Area.FOILS_ALL));
        head.lastOn(on);
        rinse = bell(story.floor(), RINSE);
    }

    private enum Said {
        HEARD,
        NOT_NOW;

        Command to(Bell bell) {
            return this == HEARD
                    ? new Acknowledge(bell.key(), null)
                    : new Shelve(bell.key(), Duration.ofMinutes(3), BellShelved.Why.values()[0], null);
        }
    }

    private java.time.Instant begins(Stage.Step step) {
        return rinse.stages().stream()
                .filter(stage -> stage.step() == step)
                .findFirst()
                .orElseThrow()
                .from();
    }

    private Floor after(Command command, Asked asked) {
        var decided = (Decision.Accepted) command.decide(story.floor(), asked);
        var facts = new ArrayList<Fact>();
        decided.drafts().forEach(draft -> facts.add(draft.numbered(story.floor().lastSeq() + facts.size() + 1, asked)));
        return story.floor().with(facts);
    }

    @ParameterizedTest
    @EnumSource
    void quietsNothingThatCameSince(Said said) {
        var pressed = begins(Stage.Step.START).plusSeconds(10);
        var now = begins(Stage.Step.DUE).plusSeconds(30);
        var asked = Asked.at(now).happened(pressed, Asked.Told.BY_AGE);
        var told = bell(after(said.to(rinse), asked), RINSE);
        assertThat(told.isRinging(pressed.plusSeconds(1)))
                .as("what was pressed about")
                .isFalse();
        assertThat(told.isRinging(now)).as("what came since").isTrue();
    }

    /** From the device's answer on, not from when it arrived: a rinse rings again sooner, never later. */
    @Test
    void countsFromWhenItWasPressed() {
        var pressed = begins(Stage.Step.DUE).plusSeconds(10);
        var asked = Asked.at(pressed.plusSeconds(90)).happened(pressed, Asked.Told.BY_AGE);
        var told = bell(after(Said.HEARD.to(rinse), asked), RINSE);
        assertThat(told.seen())
                .singleElement()
                .satisfies(seen -> assertThat(seen.at()).isEqualTo(pressed));
    }

    /** Nobody answers what has not begun: such a press is as old as the bell at most. */
    @ParameterizedTest
    @EnumSource
    void isNoOlderThanTheBell(Said said) {
        var begins = rinse.stages().get(0).from();
        var now = begins(Stage.Step.START).plusSeconds(20);
        var asked = Asked.at(now).happened(begins.minusSeconds(1), Asked.Told.BY_AGE);
        assertThat(asked.possible(Said.HEARD.to(rinse), story.floor()))
                .isEqualTo(asked.happened(begins, Asked.Told.UNSURE));
        assertThat(asked.happened(begins, Asked.Told.BY_AGE)
                        .possible(said.to(rinse), story.floor())
                        .told())
                .isEqualTo(Asked.Told.BY_AGE);
    }

    /** A finger that was on its way when the bell got louder meant what it was before. */
    @ParameterizedTest
    @CsvSource({"0, START", "499, START", "500, DUE"})
    void aFreshStageIsNotMeant(long millis, Stage.Step meant) {
        var pressed = Asked.at(begins(Stage.Step.DUE).plusMillis(millis));
        assertThat(bell(after(Said.HEARD.to(rinse), pressed), RINSE).seen())
                .singleElement()
                .satisfies(seen -> assertThat(seen.what().step()).isEqualTo(meant));
    }
}
