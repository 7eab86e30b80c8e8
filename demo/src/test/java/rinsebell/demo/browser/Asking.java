package rinsebell.demo.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;

/** Somebody who asks a server over HTTP, one thing after another. */
final class Asking {
    private static final int REFUSED = 400;

    private final HttpClient client =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NORMAL).build();
    private final String url;

    Asking(String url) {
        this.url = url;
    }

    /** What a page says. */
    String page(String path) {
        return taken(HttpRequest.newBuilder(URI.create(url + path)));
    }

    /** A press of a program. */
    String press(String path, String id, String json) {
        return taken(HttpRequest.newBuilder(URI.create(url + path))
                .header("Idempotency-Key", id)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json)));
    }

    private String taken(HttpRequest.Builder asked) {
        try {
            HttpResponse<String> answer = client.send(asked.build(), BodyHandlers.ofString());
            if (answer.statusCode() >= REFUSED) {
                throw new IllegalStateException(answer.uri() + " was answered " + answer.statusCode() + answer.body());
            }
            return answer.body();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("nobody waits for the answer", e);
        }
    }
}
