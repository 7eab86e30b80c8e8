package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import rinsebell.app.door.Routes;

/** The description of the API (OpenAPI 3.0.3), as YAML and as JSON. */
public final class DescriptionRoutes implements Routes {

    private static final String FOLDER = "/rinsebell/app/";

    private final String yaml = read("openapi.yaml");
    private final String json = read("openapi.json");

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/openapi.yaml", ctx -> ctx.contentType("application/yaml; charset=utf-8")
                .result(yaml));
        routes.get("/api/openapi.json", ctx -> ctx.contentType("application/json; charset=utf-8")
                .result(json));
    }

    private static String read(String name) {
        try (var in = DescriptionRoutes.class.getResourceAsStream(FOLDER + name)) {
            return new String(
                    Objects.requireNonNull(in, () -> name + " is not on the class path")
                            .readAllBytes(),
                    StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
