package rinsebell.app;

import io.javalin.Javalin;
import io.javalin.router.Endpoint;
import io.javalin.security.Roles;
import io.javalin.security.RouteRole;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rinsebell.app.desk.PressMemory;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.lead.Days;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
import rinsebell.db.DataFolder;
import rinsebell.db.FolderInUse;
import rinsebell.db.Keyring;
import rinsebell.db.SalonStore;
import rinsebell.floor.Floor;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Words;

/** Every route that a whole server has, such as {@code GET /visits/{visit}}. */
public final class RegisteredRoutes {

    private RegisteredRoutes() {}

    static Set<String> in(Path path) throws IOException, FolderInUse {
        return withRoles(path).keySet();
    }

    /** With what each says of itself to whoever looks who may come in. */
    public static SortedMap<String, Set<RouteRole>> withRoles(Path path) throws IOException, FolderInUse {
        SalonClock clock = SalonClock.startingAtTheWall(new MachineTime(), 1);
        LiveFloor.Paper paper = new LiveFloor.Paper(new Pages(), Words.british(), Assets.under("/assets"));
        try (DataFolder data = DataFolder.open(path);
                SalonStore store = SalonStore.open(data, clock.now());
                LiveSalon salon = new LiveSalon(
                        kept(store, Keyring.open(data)), clock, paper, new AliveMarker(path), Optional::empty)) {
            return registered(salon);
        }
    }

    private static LiveSalon.Kept kept(SalonStore store, Keyring keyring) {
        Snapshot nobody = Snapshot.of(Floor.EMPTY, Map.of());
        return new LiveSalon.Kept(
                nobody,
                store,
                new PressMemory(id -> Optional.empty()),
                store.clients(),
                store.lookIns(),
                store.retention(),
                store.compactions(),
                keyring,
                store.trail(),
                store::pressed,
                new Days.Kept(store::facts, store::facts, store::texts, store.soundings()),
                null,
                Optional::empty);
    }

    private static SortedMap<String, Set<RouteRole>> registered(LiveSalon salon) {
        Javalin javalin = Javalin.create(config -> salon.routes().forEach(group -> group.addTo(config.routes)));
        SortedMap<String, Set<RouteRole>> routes = new TreeMap<>();
        javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .forEach(endpoint -> routes.put(endpoint.method + " " + endpoint.path, roles(endpoint)));
        return routes;
    }

    private static Set<RouteRole> roles(Endpoint endpoint) {
        Roles roles = endpoint.metadata(Roles.class);
        return roles == null ? Set.of() : roles.getRoles();
    }
}
