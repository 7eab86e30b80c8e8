package rinsebell.demo.kill;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.stream.Collectors;
import rinsebell.app.time.MachineTime;

/** A program that presses over HTTP. */
final class Client {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final ObjectMapper JSON = new ObjectMapper();

    /** The page says where to go on. */
    private static final int DONE = 204;

    private static final int REFUSED = 409;

    private final HttpClient http = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(PATIENCE)
            .build();
    private final String url;

    Client(int port) {
        this.url = "http://localhost:" + port;
    }

    /**
     * Presses once. What the queue of a browser sends is answered with a page, so it is asked for once more as a program,
     * under the same id.
     *
     * @throws IOException when no answer came: the press may have counted or not
     * @throws IllegalStateException when a browser was answered otherwise than a program
     */
    Answered press(Answered.Asked asked) throws IOException, InterruptedException {
        if (!asked.isQueued()) {
            return fromProgram(asked);
        }
        var status = fromQueue(asked);
        var answered = fromProgram(asked);
        if (status != (answered.isAccepted() ? DONE : REFUSED)) {
            throw new IllegalStateException("a browser was answered " + status + " to " + answered);
        }
        return answered;
    }

    private Answered fromProgram(Answered.Asked asked) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(URI.create(url + asked.path()))
                .header("Idempotency-Key", asked.id())
                .header("Content-Type", "application/json")
                .timeout(PATIENCE)
                .POST(BodyPublishers.ofString(asked.body()))
                .build();
        var response = http.send(request, BodyHandlers.ofString());
        return new Answered(asked, response.statusCode(), response.body());
    }

    /** As {@code send.js} does it: the form of the page, and for how long it has waited. */
    private int fromQueue(Answered.Asked asked) throws IOException, InterruptedException {
        var age = new MachineTime().wallMillis() - asked.pressedMillis();
        var request = HttpRequest.newBuilder(URI.create(url + asked.path().substring("/api".length())))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", url)
                .header("Rinsebell-Part", "answer")
                .header("Rinsebell-Again", "true")
                .timeout(PATIENCE)
                .POST(BodyPublishers.ofString(fields(asked.body()) + "press=" + asked.id() + "&age=" + age))
                .build();
        return http.send(request, BodyHandlers.discarding()).statusCode();
    }

    /** The fields of a flat JSON object as a form has them, each with a mark behind it. */
    private static String fields(String json) throws IOException {
        return JSON.readTree(json).properties().stream()
                .map(field -> field.getKey() + "="
                        + URLEncoder.encode(field.getValue().asText(), StandardCharsets.UTF_8) + "&")
                .collect(Collectors.joining());
    }

    /** Looks at a page. */
    HttpResponse<String> page(String path) throws IOException, InterruptedException {
        var request =
                HttpRequest.newBuilder(URI.create(url + path)).timeout(PATIENCE).build();
        return http.send(request, BodyHandlers.ofString());
    }
}
