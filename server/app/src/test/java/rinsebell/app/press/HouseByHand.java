package rinsebell.app.press;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.desk.FloorDesk;
import rinsebell.app.desk.LedgerByHand;
import rinsebell.app.desk.PressMemory;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.time.ClockProof;
import rinsebell.app.time.SalonClock;
import rinsebell.floor.Floor;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Words;

/** What takes presses and shows what comes of them, as in the real house, over a ledger that a test holds in its hand. */
final class HouseByHand implements AutoCloseable {
    final LiveFloor live;
    final FloorDesk desk;

    /** @param begins the floor as it stands at the start */
    HouseByHand(Floor begins, SalonClock clock, LedgerByHand ledger) {
        var loaded = Snapshot.of(begins, Map.of());
        live = new LiveFloor(
                loaded,
                clock,
                new LiveFloor.Paper(new Pages(), Words.british(), Assets.under(AssetRoutes.PREFIX)),
                List::of);
        desk = new FloorDesk(
                loaded,
                new FloorDesk.Tools(
                        ledger,
                        new PressMemory(id -> Optional.empty()),
                        (reason, on, texts) -> reason.code().name(),
                        facts -> ClockProof.steps(facts).forEach((fact, step) -> clock.confirm(step, fact)),
                        live::show,
                        () -> {}));
    }

    @Override
    public void close() {
        desk.close();
    }
}
