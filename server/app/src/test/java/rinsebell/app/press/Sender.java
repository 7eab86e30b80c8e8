package rinsebell.app.press;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import rinsebell.app.RunningSalon;
import rinsebell.app.api.Described;

/**
 * Sends presses that may be wrong in every way, thousands of them; what programs are answered is held against the
 * description.
 */
record Sender(RunningSalon salon) {

    private static final HttpClient CLIENT =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    /** Whatever is not ASCII is escaped, so that half a character arrives as half a character. */
    private static final ObjectMapper JSON =
            JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    static final String JSON_TYPE = "application/json";
    static final String FORM_TYPE = "application/x-www-form-urlencoded";

    /** A press of a program, with a fresh id. */
    Reply json(String path, JsonNode body) {
        return new Message("POST", "/api" + path).typed(JSON_TYPE).withFreshId().send(text(body));
    }

    /** A press of a page. */
    Reply form(String path, JsonNode body) {
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
        private final HttpRequest.Builder request;

        private Message(String method, String path) {
            this.method = method;
            this.path = path;
            request = HttpRequest.newBuilder(URI.create(salon.url() + path));
        }

        Message typed(String type) {
            return with("Content-Type", type);
        }

        Message withFreshId() {
            return with("Idempotency-Key", UUID.randomUUID().toString());
        }

        Message with(String header, String value) {
            request.header(header, value);
            return this;
        }

        Reply send(String body) {
            return send(BodyPublishers.ofString(body));
        }

        Reply send(byte[] body) {
            return send(BodyPublishers.ofByteArray(body));
        }

        private Reply send(BodyPublisher body) {
            try {
                var reply = new Reply(CLIENT.send(request.method(method, body).build(), BodyHandlers.ofString()));
                if (path.startsWith("/api")) {
                    Described.answers(method, path, reply.statusCode(), reply.contentType(), reply.asString());
                }
                return reply;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("nobody waits for the answer", e);
            }
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
