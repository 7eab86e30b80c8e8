package rinsebell.demo.kill;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;

/** A program that presses over HTTP. */
final class Client {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final HttpClient http = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(PATIENCE)
            .build();
    private final String url;

    Client(int port) {
        this.url = "http://localhost:" + port;
    }

    /**
     * Presses once.
     *
     * @throws IOException when no answer came: the press may have counted or not
     */
    Answered press(Answered.Asked asked) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(URI.create(url + asked.path()))
                .header("Idempotency-Key", asked.id())
                .header("Content-Type", "application/json")
                .timeout(PATIENCE)
                .POST(BodyPublishers.ofString(asked.body()))
                .build();
        var response = http.send(request, BodyHandlers.ofString());
        return new Answered(asked, response.statusCode(), response.body());
    }

    /** Looks at a page. */
    HttpResponse<String> page(String path) throws IOException, InterruptedException {
        var request =
                HttpRequest.newBuilder(URI.create(url + path)).timeout(PATIENCE).build();
        return http.send(request, BodyHandlers.ofString());
    }
}
