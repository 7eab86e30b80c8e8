package rinsebell.app.press;

import static io.restassured.RestAssured.given;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import rinsebell.app.RunningSalon;
import rinsebell.app.api.Described;

/** Sends presses that may be wrong in every way; what programs are answered is held against the description. */
record Sender(RunningSalon salon) {

    /** Whatever is not ASCII is escaped, so that half a character arrives as half a character. */
    private static final ObjectMapper JSON =
            JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    static final String JSON_TYPE = "application/json";
    static final String FORM_TYPE = "application/x-www-form-urlencoded";

    /** A press of a program, with a fresh id. */
    Response json(String path, JsonNode body) {
        return new Message("POST", "/api" + path).typed(JSON_TYPE).withFreshId().send(text(body));
    }

    /** A press of a page. */
    Response form(String path, JsonNode body) {
        List<String> pairs = new ArrayList<>();
        flatten("", body, pairs);
        return new Message("POST", path).typed(FORM_TYPE).withFreshId().send(String.join("&", pairs));
    }

    Message message(String method, String path) {
        return new Message(method, path);
    }

    /** One request, in pieces. */
    final class Message {
        private final String method;
        private final String path;
        private RequestSpecification request;

        private Message(String method, String path) {
            this.method = method;
            this.path = path;
            request = given(salon.request()).redirects().follow(false);
            if (path.startsWith("/api")) {
                request = request.filter(Described.ANSWERS);
            }
        }

        Message typed(String type) {
            request = request.contentType(type);
            return this;
        }

        Message withFreshId() {
            return with("Idempotency-Key", UUID.randomUUID().toString());
        }

        Message with(String header, String value) {
            request = request.header(header, value);
            return this;
        }

        Response send(String body) {
            return request.body(body).request(method, path);
        }

        Response send(byte[] body) {
            return request.body(body).request(method, path);
        }
    }

    static String text(JsonNode body) {
        try {
            return JSON.writeValueAsString(body);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void flatten(String name, JsonNode value, List<String> pairs) {
        if (value.isObject()) {
            value.properties()
                    .forEach(each -> flatten(
                            name.isEmpty() ? each.getKey() : name + "." + each.getKey(), each.getValue(), pairs));
        } else if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                flatten(value.get(i).isContainerNode() ? name + "." + i : name, value.get(i), pairs);
            }
        } else if (!value.isNull()) {
            pairs.add(encoded(name) + "=" + encoded(value.asText()));
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
