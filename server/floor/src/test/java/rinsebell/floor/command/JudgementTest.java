package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;

/**
 * What is said of a bowl before it is mixed. Another lightening round stays off a scalp that was lightened today: common
 * practice, no source.
 */
class JudgementTest {
    private final Story story = Story.stocked();
    private final Head fresh = story.at("09:40").arrivesFine();
    private final Head lightened = story.arrivesFine();
    private final Head rinsed = story.arrivesFine();
    private final List<Portion> cream = story.portions(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
    private final Instant at;

    JudgementTest() {
        story.at("10:00");
        lightened.puts(story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20)), onScalp(Area.REGROWTH));
        var off = rinsed.puts(story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20)), onScalp(Area.REGROWTH));
        story.at("10:20");
        rinsed.rinses(off);
        story.at("10:30");
        at = story.now();
    }

    private Judgement of(Head head, BowlReason reason) {
        return Judgement.of(story.floor(), head.id(), cream, reason, at);
    }

    private static Stream<ReasonCode> codes(List<Reason> reasons) {
        return reasons.stream().map(Reason::code);
    }

    /** While it is on, a bowl may be a refill or another round; once it is off, it is another round anyway. */
    @ParameterizedTest
    @EnumSource(BowlReason.class)
    void theReasonMattersWhileTheScalpIsBeingLightened(BowlReason reason) {
        assertThat(of(lightened, reason).hangsOnReason()).isTrue();
        assertThat(of(rinsed, reason).hangsOnReason()).isFalse();
        assertThat(of(fresh, reason).hangsOnReason()).isFalse();
        assertThat(Judgement.of(story.floor(), null, cream, reason, at).hangsOnReason())
                .isFalse();
    }

    /** Whether the reason matters is found out by another round alone: nothing else may be judged by its reason. */
    @Test
    void allReasonsButAnotherRoundAreJudgedAlike() {
        for (var head : List.of(fresh, lightened, rinsed)) {
            var first = of(head, BowlReason.FIRST);
            for (var reason : BowlReason.values()) {
                if (reason != BowlReason.ANOTHER_ROUND) {
                    assertThat(of(head, reason)).as("%s", reason).isEqualTo(first);
                }
            }
        }
    }

    @Test
    void bothZonesAreJudged() {
        var another = of(lightened, BowlReason.ANOTHER_ROUND);
        assertThat(codes(another.onScalp()).filter(code -> !code.isCaution())).isNotEmpty();
        assertThat(codes(another.offScalp()).filter(code -> !code.isCaution())).isEmpty();
    }
}
