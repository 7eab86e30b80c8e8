package rinsebell.floor.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import org.junit.jupiter.api.Test;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.Area;

/** What a head may have meanwhile. Its times and prohibitions are common practice, no source. */
class WhileOnTest extends AskedHead {

    private WhileOn whileOn() {
        return restrictions(head).whileOn().orElseThrow();
    }

    @Test
    void nothingOnForbidsNothing() {
        assertThat(restrictions(head).whileOn()).isEmpty();
        story.at("10:00");
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:40");
        head.rinses(on);
        assertThat(restrictions(head).whileOn()).isEmpty();
    }

    @Test
    void creamOnAScalpMayStayThereWithoutFilmOrDryer() {
        head.puts(cream(), onScalp(Area.REGROWTH));
        assertThat(whileOn().known()).isTrue();
        assertThat(whileOn().offScalpOnly()).isFalse();
        assertThat(whileOn().limits().cover(Cover.FILM).allowed()).isFalse();
        assertThat(whileOn().limits().heat(Heat.DRYER).allowed()).isFalse();
        assertThat(whileOn().limits().heat(Heat.GENTLE_STEAM).allowed()).isTrue();
    }

    /** Powder is the stricter in where it goes, cream in what covers it: together both count. */
    @Test
    void theStrictestOfAllThatIsOnCounts() {
        head.puts(cream(), onScalp(Area.REGROWTH));
        var before = whileOn().limits();
        head.puts(powder(), offScalp(Area.FOILS_ALL));
        assertThat(whileOn().offScalpOnly()).isTrue();
        assertThat(whileOn().anotherRound()).isFalse();
        assertThat(whileOn().limits().cover(Cover.FILM).allowed()).isFalse();
        assertThat(before.zone()).isEqualTo(Zone.ON_SCALP);
    }

    @Test
    void anotherRoundStaysOffTheScalpWhateverItsDirectionsAllow() {
        story.at("10:00");
        var on = head.puts(cream(), onScalp(Area.REGROWTH));
        story.at("10:40");
        head.rinses(on);
        story.at("10:50");
        head.puts(cream(), offScalp(Area.LENGTHS));
        assertThat(whileOn().limits().zone()).isEqualTo(Zone.ON_SCALP);
        assertThat(whileOn().anotherRound()).isTrue();
        assertThat(whileOn().offScalpOnly()).isTrue();
    }

    @Test
    void anUnknownRecipeIsSaidToBeUnknown() {
        head.puts(story.mixes(), offScalp(Area.LENGTHS));
        assertThat(whileOn().known()).isFalse();
    }
}
