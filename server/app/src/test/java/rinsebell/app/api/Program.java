package rinsebell.app.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.util.Map;
import java.util.UUID;
import rinsebell.app.RunningSalon;

/** A program that calls the API, every call held against the API's own description. */
record Program(RunningSalon salon) {

    /** Sends a press that must be taken, and answers the number of its first fact. */
    long press(String path, Map<String, ?> body) {
        return taken(send(path, body, freshId()));
    }

    /** The number of the first fact of a press that was taken. */
    static long taken(ValidatableResponse answer) {
        Response response = answer.extract().response();
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(201);
        Number first = response.path("facts[0]");
        return first.longValue();
    }

    ValidatableResponse send(String path, Map<String, ?> body) {
        return send(path, body, freshId());
    }

    ValidatableResponse send(String path, Map<String, ?> body, String pressId) {
        return ask().header("Idempotency-Key", pressId).body(body).post(path).then();
    }

    ValidatableResponse read(String path) {
        return ask().get(path).then().statusCode(200);
    }

    /** A request that is right by the description. */
    RequestSpecification ask() {
        return given(salon.request()).filter(Described.BOTH);
    }

    /** A request that may be wrong. */
    RequestSpecification askAnyhow() {
        return given(salon.request()).filter(Described.ANSWERS);
    }

    static String freshId() {
        return UUID.randomUUID().toString();
    }
}
