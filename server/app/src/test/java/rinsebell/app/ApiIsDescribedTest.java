package rinsebell.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.parser.OpenAPIV3Parser;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.db.FolderInUse;

/** Whatever the server answers under {@code /api} is described, and whatever is described is answered. */
class ApiIsDescribedTest {

    private static final Set<String> THE_DESCRIPTION_ITSELF = Set.of("GET /api/openapi.yaml", "GET /api/openapi.json");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void everyRouteIsDescribedAndNothingElse() throws IOException, FolderInUse {
        Set<String> expected = new TreeSet<>(described());
        expected.addAll(THE_DESCRIPTION_ITSELF);
        assertThat(RegisteredRoutes.in(folder))
                .filteredOn(route -> route.contains(" /api/"))
                .containsExactlyElementsOf(expected);
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
}
