package rinsebell.app.page;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Scoop.g;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.feed.Board;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.bell.Turns;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Words;
import rinsebell.web.board.Boards;
import rinsebell.web.board.Listening;

/** What was drawn ahead stands from its instant on, and only where nothing else has happened until then. */
class DrawnAheadTest {
    private static final Instant DUE = TEN.plusSeconds(1);

    private final Story story = Story.stocked().at(TEN);
    private final TimeByHand time = new TimeByHand(TEN);
    private final AtomicReference<List<Listening>> listening =
            new AtomicReference<>(List.of(new Listening(new Ear.Everything(), Listening.State.ON, true)));
    private final LiveFloor live = new LiveFloor(
            Snapshot.of(story.floor(), Map.of()),
            SalonClock.startingAtTheWall(time, 1),
            new LiveFloor.Paper(new Pages(), Words.british(), Assets.under(AssetRoutes.PREFIX)),
            listening::get);
    private final Board ahead = live.drawAhead(Boards.FLOOR, DUE).orElseThrow();

    private Board drawn() {
        return live.draw(Boards.FLOOR).orElseThrow();
    }

    @Test
    void standsWhenItsInstantHasCome() {
        time.pass(Duration.ofSeconds(1));
        assertThat(drawn()).as("before anybody says that it is due").isNotSameAs(ahead);
        live.fellDue();
        assertThat(drawn()).isSameAs(ahead);
        assertThat(drawn().number()).isEqualTo(live.beat().n());
    }

    @Test
    void isOneAmongOthersOfThatInstant() {
        var bells = live.drawAhead(Boards.BELLS, DUE).orElseThrow();
        time.pass(Duration.ofSeconds(1));
        live.fellDue();
        assertThat(drawn()).isSameAs(ahead);
        assertThat(live.draw(Boards.BELLS)).containsSame(bells);
    }

    @Test
    void isForgottenWhenSomethingElseFallsDueBefore() {
        time.pass(Duration.ofMillis(999));
        live.fellDue();
        assertThat(drawn()).isNotSameAs(ahead);
        time.pass(Duration.ofMillis(1));
        live.fellDue();
        assertThat(drawn()).isNotSameAs(ahead);
    }

    /** A machine that stood still for a while has more to show than what was due first. */
    @Test
    void isForgottenWhenItsInstantIsLongPast() {
        time.pass(Duration.ofSeconds(2));
        live.fellDue();
        assertThat(drawn()).isNotSameAs(ahead);
    }

    @Test
    void isForgottenWhenTheNextIsDueAsWell() {
        for (var later : List.of(0, 5)) {
            story.at(TEN.plusMillis(later)).arrivesFine();
            story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20));
        }
        live.show(Snapshot.of(story.floor(), Map.of()));
        var turns = new Turns(story.floor().bells());
        var first = turns.after(TEN.plusSeconds(1)).orElseThrow();
        assertThat(turns.after(first)).contains(first.plusMillis(5));
        var drawnAhead = live.drawAhead(Boards.FLOOR, first).orElseThrow();
        time.pass(Duration.between(TEN, first.plusMillis(4)));
        live.fellDue();
        assertThat(drawn()).isSameAs(drawnAhead);
        var again = live.drawAhead(Boards.FLOOR, first).orElseThrow();
        time.pass(Duration.ofMillis(1));
        live.fellDue();
        assertThat(drawn()).isNotSameAs(again);
    }

    @Test
    void isForgottenWhenADeviceHasGoneMeanwhile() {
        listening.set(List.of());
        time.pass(Duration.ofSeconds(1));
        live.fellDue();
        assertThat(drawn()).isNotSameAs(ahead);
    }

    @Test
    void isForgottenWhenTheFloorChangesBefore() {
        story.arrivesFine();
        live.show(Snapshot.of(story.floor(), Map.of()));
        time.pass(Duration.ofSeconds(1));
        live.fellDue();
        assertThat(drawn()).isNotSameAs(ahead);
    }

    @Test
    void isForgottenWhenTheFloorChangesAtThatInstant() {
        time.pass(Duration.ofSeconds(1));
        story.arrivesFine();
        live.show(Snapshot.of(story.floor(), Map.of()));
        assertThat(drawn()).isNotSameAs(ahead);
    }
}
