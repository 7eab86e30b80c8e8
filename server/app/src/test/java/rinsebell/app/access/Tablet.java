package rinsebell.app.access;

import static io.restassured.RestAssured.given;

import io.restassured.config.RedirectConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.net.URI;
import java.util.HashMap;
import java.util.Map;
import rinsebell.app.RunningSalon;

/** A browser that keeps its cookies, on the machine itself or somewhere else on the network. */
final class Tablet {
    /** A name under which other machines find the server. */
    static final String NAME = "salon.test";

    private final RunningSalon salon;
    private final String host;
    private final Map<String, String> cookies = new HashMap<>();

    private Tablet(RunningSalon salon, String host) {
        this.salon = salon;
        this.host = host;
    }

    static Tablet atTheServer(RunningSalon salon) {
        return new Tablet(salon, URI.create(salon.url()).getAuthority());
    }

    static Tablet onTheNetwork(RunningSalon salon) {
        return new Tablet(salon, NAME + ":" + URI.create(salon.url()).getPort());
    }

    Map<String, String> cookies() {
        return cookies;
    }

    /** A request with what it kept, that follows nothing. */
    RequestSpecification request() {
        return given(salon.request())
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
                .header("Origin", URI.create(salon.url()).getScheme() + "://" + host)
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
