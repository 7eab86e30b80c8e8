package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Scoop.g;

import org.junit.jupiter.api.Test;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.bowl.Left.Quarters;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;

/** A bowl is thrown away once; what was left in it can be said with that, later, and anew. */
class ThrowAwayTest {
    private static final Left HALF = new Left.Estimated(Quarters.HALF);
    private static final Left QUARTER = new Left.Estimated(Quarters.QUARTER);

    private final Story story = Story.stocked().at("09:00");
    private final rinsebell.floor.bowl.BowlId bowl = story.mixes(g(60, Shelf.REMOVER));
    private final Desk desk = Desk.after(story).at("09:10");

    private rinsebell.floor.bowl.Bowl bowl() {
        return desk.floor().bowl(bowl).orElseThrow();
    }

    @Test
    void whatIsLeftIsSaidInTheSamePress() {
        desk.plans(new ThrowAway(bowl, HALF));
        assertThat(bowl().thrownAwayAt()).isEqualTo(Saturday.at("09:10"));
        assertThat(bowl().left()).isEqualTo(HALF);
    }

    @Test
    void itIsSaidLaterAndTheBowlWasThrownAwayWhenItWas() {
        desk.plans(new ThrowAway(bowl, null));
        assertThat(bowl().left()).isNull();
        desk.at("09:30").plans(new ThrowAway(bowl, HALF));
        assertThat(bowl().left()).isEqualTo(HALF);
        assertThat(bowl().thrownAwayAt()).isEqualTo(Saturday.at("09:10"));
        desk.at("09:31").plans(new ThrowAway(bowl, QUARTER));
        assertThat(bowl().left()).isEqualTo(QUARTER);
    }
}
