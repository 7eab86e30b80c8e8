package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.salon.Service;
import rinsebell.floor.turnaround.Range;
import rinsebell.web.board.SpanTelling;
import rinsebell.web.view.Answer;
import rinsebell.web.view.Judged;

/** What the welcome answers at ten o'clock while somebody asks for a place: chair 1 is taken, the others are free. */
class WalkInTest {
    private final PageTable pages = new PageTable();

    private Judged asked(String... typed) {
        var page = pages.view(pages.table.floor(), new Presses.Name("visits", ""), 0, Fields.of(typed), List.of());
        return (Judged) ((SheetPage) page).forms().get(0).shown().orElseThrow();
    }

    private List<String> reasons(String... typed) {
        return asked(typed).reasons().stream().map(Answer.Reason::rule).toList();
    }

    @Test
    void nobodyIsToldAnythingBeforeTheyAsk() {
        assertThat(asked().title()).startsWith("Choose what they would like");
        assertThat(asked().reasons()).isEmpty();
        assertThat(asked("least", "soon").title()).startsWith("Choose what they would like");
    }

    @Test
    void aChairIsFreeNowForAsLongAsTheySay() {
        assertThat(asked("least", "90").title()).isEqualTo("chair 2 now, done 11:30.");
        assertThat(asked("least", "90", "place", "chair-3").title()).isEqualTo("chair 3 now, done 11:30.");
    }

    @Test
    void aTakenChairIsSaidWithTheTimeAtWhichItIsFree() {
        var moment = pages.moment();
        var free = Objects.requireNonNull(
                moment.floor().turnaround(moment.now()).chairs().get(1));
        var least = Duration.ofMinutes(90);
        var done = new Range(free.likely().plus(least), free.latest().plus(least));
        assertThat(free.likely()).isAfter(moment.now());
        assertThat(asked("least", "90", "place", "chair-1").title())
                .isEqualTo("chair 1 at " + SpanTelling.span(moment, free) + ", done " + SpanTelling.span(moment, done)
                        + ".");
    }

    /** A cut needs no skin test; what may hold dye does, two days old and without a reaction. It is 16 May. */
    @Test
    void aBowlAsksForTheSkinTest() {
        assertThat(reasons("services", "cut")).isEmpty();
        assertThat(reasons("services", "bowl"))
                .containsExactly(
                        "Colour only with a skin test on record: no reaction, two days old.",
                        "Questions not all answered");
        var tested = new String[] {"services", "bowl", "skinTest", "no-reaction", "skinTestOn", "2026-05-14"};
        assertThat(reasons(tested))
                .containsExactly(
                        "Skin test on record, without a reaction: it counts today.", "Questions not all answered");
        tested[5] = "2026-05-15";
        assertThat(reasons(tested)).contains("Skin test does not count");
        assertThat(reasons("services", "toner", "skinTest", "reacted")).contains("Skin test reacted");
        assertThat(reasons("services", "bowl", "under16", "yes", "earlierReaction", "yes"))
                .contains("Under 16", "Earlier reaction to hair dye");
    }

    /** What was asked for is kept when they stay. */
    @Test
    void whatTheyCameForIsKeptWithTheWelcome() {
        var read = pages.table.read(
                "visits", "", 0, Fields.of("label", "M. A.", "place", "bench", "services", "cut", "services", "bowl"));
        assertThat(((Welcome) PressTable.command(read)).services()).containsExactly(Service.BOWL, Service.CUT);
    }
}
