package rinsebell.app.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;

/** The description of the API (OpenAPI 3.0.3): written as YAML, and made into JSON when somebody first asks for that. */
public final class DescriptionRoutes implements Routes {

    private static final String SOURCE = "/rinsebell/app/openapi.yaml";

    /** Pieces that many calls have in common are written once and named, more often than the library thinks usual. */
    private static final int MOST_NAMED_PIECES = 1_000;

    private final String yaml = Resource.text(SOURCE);
    private @Nullable String json;

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                "/api/openapi.yaml",
                ctx -> ctx.contentType("application/yaml; charset=utf-8").result(yaml),
                Matter.FLOOR);
        routes.get(
                "/api/openapi.json",
                ctx -> ctx.contentType("application/json; charset=utf-8").result(json()),
                Matter.FLOOR);
    }

    private synchronized String json() {
        if (json == null) {
            json = asJson(yaml);
        }
        return json;
    }

    private static String asJson(String yaml) {
        LoaderOptions options = new LoaderOptions();
        options.setMaxAliasesForCollections(MOST_NAMED_PIECES);
        Object tree = new Yaml(new SafeConstructor(options)).load(yaml);
        try {
            return new ObjectMapper().writeValueAsString(tree);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("what YAML says can always be said in JSON", e);
        }
    }
}
