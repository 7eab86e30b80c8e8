package rinsebell.app.page;

import static rinsebell.floor.testing.Saturday.TEN;

import java.util.List;
import java.util.Map;
import org.jetbrains.lincheck.datastructures.IntGen;
import org.jetbrains.lincheck.datastructures.Operation;
import org.jetbrains.lincheck.datastructures.Param;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rinsebell.app.Races;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.testing.Story;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Words;

/** The desk shows floors and the watch says what fell due, while pages and the feed look. */
@Tag("races")
@Tag("long")
class LiveFloorRacesTest {

    @Test
    void noChangeLosesItsNumber() {
        Races.noneUnderStress(Changes.class);
    }

    @Param(name = "floor", gen = IntGen.class, conf = "0:1")
    public static class Changes {
        private static final List<Snapshot> FLOORS = List.of(
                Snapshot.of(Story.stocked().at(TEN).floor(), Map.of()),
                Snapshot.of(Story.stocked().at(TEN).floor(), Map.of()));
        private static final LiveFloor.Paper PAPER =
                new LiveFloor.Paper(new Pages(), Words.british(), Assets.under(AssetRoutes.PREFIX));

        private final LiveFloor live =
                new LiveFloor(FLOORS.get(0), SalonClock.startingAtTheWall(new TimeByHand(TEN), 1), PAPER, List::of);

        @Operation
        public void show(@Param(name = "floor") int floor) {
            live.show(FLOORS.get(floor));
        }

        @Operation
        public void fellDue() {
            live.fellDue();
        }

        @Operation
        public long number() {
            return live.beat().n();
        }

        @Operation
        public int floor() {
            return live.snapshot() == FLOORS.get(0) ? 0 : 1;
        }
    }
}
