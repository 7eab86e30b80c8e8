package rinsebell.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.parser.OpenAPIV3Parser;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.desk.PressMemory;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
import rinsebell.db.DataFolder;
import rinsebell.db.FolderInUse;
import rinsebell.db.SalonStore;
import rinsebell.floor.Floor;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Words;

/** Whatever the server answers under {@code /api} is described, and whatever is described is answered. */
class ApiIsDescribedTest {

    private static final Set<String> THE_DESCRIPTION_ITSELF = Set.of("GET /api/openapi.yaml", "GET /api/openapi.json");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void everyRouteIsDescribedAndNothingElse() throws IOException, FolderInUse {
        Set<String> expected = new TreeSet<>(described());
        expected.addAll(THE_DESCRIPTION_ITSELF);
        assertThat(registered(folder)).containsExactlyElementsOf(expected);
    }

    private static Set<String> described() {
        OpenAPI description = new OpenAPIV3Parser().read("rinsebell/app/openapi.yaml");
        return description.getPaths().entrySet().stream()
                .flatMap(path -> methods(path.getValue()).map(method -> method + " " + path.getKey()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<PathItem.HttpMethod> methods(PathItem item) {
        return item.readOperationsMap().keySet().stream();
    }

    private static Set<String> registered(Path path) throws IOException, FolderInUse {
        SalonClock clock = SalonClock.startingAtTheWall(new MachineTime(), 1);
        LiveFloor.Paper paper = new LiveFloor.Paper(new Pages(), Words.british(), Assets.under("/assets"));
        try (DataFolder data = DataFolder.open(path);
                SalonStore store = SalonStore.open(data, clock.now());
                LiveSalon salon = new LiveSalon(kept(store), clock, paper)) {
            return registered(salon);
        }
    }

    private static LiveSalon.Kept kept(SalonStore store) {
        Snapshot nobody = Snapshot.of(Floor.EMPTY, Map.of());
        return new LiveSalon.Kept(nobody, store, new PressMemory(id -> Optional.empty()), store.clients());
    }

    private static Set<String> registered(LiveSalon salon) {
        Javalin javalin = Javalin.create(config -> salon.routes().forEach(group -> group.addTo(config.routes)));
        return javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .map(endpoint -> endpoint.method + " " + endpoint.path)
                .filter(route -> route.contains(" /api/"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
