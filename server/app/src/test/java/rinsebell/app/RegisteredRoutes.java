package rinsebell.app;

import io.javalin.Javalin;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rinsebell.app.desk.PressMemory;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.lead.Days;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
import rinsebell.db.DataFolder;
import rinsebell.db.FolderInUse;
import rinsebell.db.SalonStore;
import rinsebell.floor.Floor;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Words;

/** Every route that a whole server has, such as {@code GET /visits/{visit}}. */
final class RegisteredRoutes {

    private RegisteredRoutes() {}

    static Set<String> in(Path path) throws IOException, FolderInUse {
        SalonClock clock = SalonClock.startingAtTheWall(new MachineTime(), 1);
        LiveFloor.Paper paper = new LiveFloor.Paper(new Pages(), Words.british(), Assets.under("/assets"));
        try (DataFolder data = DataFolder.open(path);
                SalonStore store = SalonStore.open(data, clock.now());
                LiveSalon salon = new LiveSalon(kept(store), clock, paper, new AliveMarker(path))) {
            return registered(salon);
        }
    }

    private static LiveSalon.Kept kept(SalonStore store) {
        Snapshot nobody = Snapshot.of(Floor.EMPTY, Map.of());
        return new LiveSalon.Kept(
                nobody,
                store,
                new PressMemory(id -> Optional.empty()),
                store.clients(),
                store.lookIns(),
                new Days.Kept(store::facts, store::facts, store::texts, store.soundings()),
                null,
                Optional::empty);
    }

    private static Set<String> registered(LiveSalon salon) {
        Javalin javalin = Javalin.create(config -> salon.routes().forEach(group -> group.addTo(config.routes)));
        return javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .map(endpoint -> endpoint.method + " " + endpoint.path)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
