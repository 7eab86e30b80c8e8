package rinsebell.app.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.http.Context;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rinsebell.app.door.Bodies;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.web.form.Fields;

/** What came in a body: a form's fields or a JSON object's, and the address's own. */
public final class FormBody {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    /** What a press tells of its own sending, and may tell otherwise when it is sent again. */
    public static final Set<String> OF_SENDING = Set.of("press", "age", "told", Who.NAME);

    private FormBody() {}

    /** A form's fields. */
    public static Fields read(Context ctx) {
        var body = new String(Bodies.of(ctx), StandardCharsets.UTF_8);
        var values = new LinkedHashMap<String, List<String>>();
        try {
            for (var pair : body.split("&", -1)) {
                add(pair, values);
            }
        } catch (IllegalArgumentException e) {
            throw Problem.of(ProblemCode.UNREADABLE_BODY).thrown();
        }
        return Fields.of(values).orElse(Fields.of(ctx.queryParamMap()));
    }

    private static void add(String pair, Map<String, List<String>> values) {
        if (pair.isEmpty()) {
            return;
        }
        var equals = pair.indexOf('=');
        var name = decoded(equals < 0 ? pair : pair.substring(0, equals));
        var value = equals < 0 ? "" : decoded(pair.substring(equals + 1));
        values.computeIfAbsent(name, fresh -> new ArrayList<>()).add(value);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }

    /** A JSON object's fields; nested names are joined by dots. */
    public static Fields json(Context ctx) {
        var body = Bodies.of(ctx);
        if (body.length == 0) {
            return Fields.NONE;
        }
        try {
            var tree = JSON.readTree(body);
            if (tree == null || !tree.isObject()) {
                throw Problem.of(ProblemCode.UNREADABLE_BODY).thrown();
            }
            return Fields.ofTree(JSON.convertValue(tree, Map.class));
        } catch (JsonProcessingException | NumberFormatException e) {
            // A number that has no end of digits is no JSON to the reader, yet it has a name of its own for that.
            throw Problem.of(ProblemCode.UNREADABLE_BODY).thrown();
        } catch (IOException e) {
            throw new IllegalStateException("a body in memory can be read", e);
        }
    }
}
