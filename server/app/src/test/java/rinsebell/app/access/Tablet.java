package rinsebell.app.access;

import static io.restassured.RestAssured.given;

import io.restassured.config.RedirectConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.app.RunningSalon;

/** A browser that keeps its cookies, on the machine itself or somewhere else on the network. */
final class Tablet {
    /** A name under which other machines find the server. */
    static final String NAME = "salon.test";

    private final URI server;
    private final RunningSalon salon;
    private final String host;
    private final Map<String, String> cookies = new HashMap<>();
    private @Nullable String key;

    private Tablet(RunningSalon salon, URI server, String name) {
        this.salon = salon;
        this.server = server;
        this.host = name + ":" + server.getPort();
    }

    static Tablet atTheServer(RunningSalon salon) {
        return new Tablet(salon, URI.create(salon.url()), "localhost");
    }

    static Tablet onTheNetwork(RunningSalon salon) {
        return new Tablet(salon, URI.create(salon.url()), NAME);
    }

    static Tablet overHttps(RunningSalon salon) {
        return new Tablet(
                salon,
                URI.create("https://localhost:" + URI.create(salon.secureUrl()).getPort()),
                NAME);
    }

    /** With a key, as a program has one. */
    Tablet showing(String shown) {
        key = shown;
        return this;
    }

    Map<String, String> cookies() {
        return cookies;
    }

    /** A request with what it kept, that follows nothing. */
    RequestSpecification request() {
        var plain = plain();
        return key == null ? plain : plain.header("Authorization", "Bearer " + key);
    }

    private RequestSpecification plain() {
        return given(salon.request())
                .baseUri(server.toString())
                .relaxedHTTPSValidation()
                .config(RestAssuredConfig.config()
                        .redirect(RedirectConfig.redirectConfig().followRedirects(false)))
                .urlEncodingEnabled(false)
                .relaxedHTTPSValidation()
                .header("Host", host)
                .cookies(cookies);
    }

    Response get(String path) {
        return keep(request().get(path));
    }

    Response post(String path, Map<String, String> typed) {
        return keep(request()
                .contentType("application/x-www-form-urlencoded; charset=utf-8")
                .header("Origin", server.getScheme() + "://" + host)
                .formParams(typed)
                .post(path));
    }

    /** As a program does. */
    Response program(String path, Map<String, ?> body) {
        return request()
                .header("Idempotency-Key", java.util.UUID.randomUUID().toString())
                .contentType("application/json")
                .body(body)
                .post(path);
    }

    /**
     * The same by a client that keeps its connection, for many in a row; what is set is not kept. It may name another host
     * because of {@code jdk.httpclient.allowRestrictedHeaders}, with which tests run.
     */
    HttpResponse<String> swiftly(HttpClient client, String method, String path, Map<String, String> headers)
            throws IOException, InterruptedException {
        var all = new HashMap<>(Map.of(
                "Host",
                host,
                "Origin",
                server.getScheme() + "://" + host,
                "Cookie",
                cookies.entrySet().stream()
                        .map(one -> one.getKey() + "=" + one.getValue())
                        .collect(Collectors.joining("; ")),
                "Content-Type",
                "application/x-www-form-urlencoded"));
        if (key != null) {
            all.put("Authorization", "Bearer " + key);
        }
        all.putAll(headers);
        if (method.equals("GET") && !headers.containsKey("Origin")) {
            all.remove("Origin");
        }
        var request = HttpRequest.newBuilder(server.resolve(path))
                .version(HttpClient.Version.HTTP_1_1)
                .method(method, BodyPublishers.noBody());
        all.forEach(request::header);
        return client.send(request.build(), BodyHandlers.ofString());
    }

    private Response keep(Response answer) {
        answer.getDetailedCookies().asList().forEach(cookie -> {
            if (cookie.getMaxAge() == 0) {
                cookies.remove(cookie.getName());
            } else {
                cookies.put(cookie.getName(), cookie.getValue());
            }
        });
        return answer;
    }
}
