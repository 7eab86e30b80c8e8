package rinsebell.app.press;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.ParseOptions;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * One press that the API's description knows.
 *
 * @param path such as {@code /visits/{id}/gate}; pages have it at the same address as programs have it below /api
 * @param fields all of them
 */
record DescribedPress(String path, List<DescribedField> fields) {
    /** What a press tells of its own sending: no press is lost over it, however wrong it is. */
    private static final List<String> OF_SENDING = List.of("age", "told");

    static Stream<DescribedPress> all() {
        ParseOptions options = new ParseOptions();
        options.setResolveFully(true);
        OpenAPI api = new OpenAPIV3Parser().read("rinsebell/app/openapi.yaml", null, options);
        return api.getPaths().entrySet().stream()
                .filter(path -> path.getValue().getPost() != null)
                .filter(path -> isPress(path.getValue().getPost()))
                .map(path -> new DescribedPress(
                        path.getKey().replaceFirst("^/api", ""),
                        fields(path.getValue().getPost())));
    }

    /** What is only looked for has no id of its own. */
    private static boolean isPress(Operation post) {
        return post.getParameters() != null
                && post.getParameters().stream().anyMatch(parameter -> "Idempotency-Key".equals(parameter.getName()));
    }

    private static List<DescribedField> fields(Operation press) {
        if (press.getRequestBody() == null) {
            return List.of();
        }
        var json = Objects.requireNonNull(press.getRequestBody().getContent().get("application/json"));
        return DescribedField.of(Objects.requireNonNull(json.getSchema()))
                .filter(field -> !OF_SENDING.contains(field.name()))
                .toList();
    }

    /** Its own fields; those that all presses have are checked with one of them. */
    List<DescribedField> checkedFields() {
        return path.equals("/visits/{id}/gate")
                ? fields
                : fields.stream()
                        .filter(field -> !List.of("by", "minutesAgo", "at", "intent", "note")
                                .contains(field.name()))
                        .toList();
    }

    @Override
    public String toString() {
        return path;
    }
}
