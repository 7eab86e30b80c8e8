package rinsebell.app;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.oneOf;

import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.api.Described;

/**
 * The real process on a disk that takes nothing for a while: the operating system lets it write no file beyond its
 * first byte, which is set from outside by {@code prlimit} of util-linux.
 */
class FullDiskTest {

    @TempDir
    private Path folder = Path.of("");

    private final List<Process> started = new ArrayList<>();
    private String url = "";
    private int visit;

    @BeforeEach
    void somebodyIsHere() throws Exception {
        List<String> command = List.of(
                ProcessHandle.current().info().command().orElseThrow(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "--port",
                "0",
                "--data",
                folder.resolve("data").toString());
        Process server = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        started.add(server);
        url = server.inputReader().readLine().substring("ready on ".length());
        Map<String, Object> house = Map.of("name", "Harbour Lane", "chairs", 8, "basins", 2, "bench", 4, "zone", "UTC");
        press("/api/salon", house).then().statusCode(201);
        visit = press("/api/visits", Map.of("label", "M. A.", "place", "bench"))
                .then()
                .statusCode(201)
                .extract()
                .path("facts[0]");
    }

    @AfterEach
    void stop() {
        started.forEach(Process::destroyForcibly);
    }

    @Test
    void nothingIsSavedBurningRingsAndAllGoesOnWhenThereIsRoom() throws Exception {
        limit("1");
        for (int time = 1; time <= 3; time++) {
            press("/api/visits", Map.of("label", "B. C.", "place", "bench"))
                    .then()
                    .statusCode(503)
                    .body("code", equalTo("not-saved"));
            press("/api/clients", Map.of("label", "B. C."))
                    .then()
                    .statusCode(503)
                    .body("code", equalTo("not-saved"));
            given(api()).get("/api/clients").then().statusCode(oneOf(200, 503));
        }
        press("/api/visits/" + visit + "/discomfort", Map.of("grade", "burning"))
                .then()
                .statusCode(503)
                .body("code", equalTo("not-saved-but-rings"));
        given(api()).get("/api/bells").then().statusCode(200).body("kind", hasItem("burning"));
        typedIsGivenBack("/visits", "label=Long+typed+label&place=bench", "Long typed label");
        typedIsGivenBack("/clients", "label=Another+label", "Another label");

        limit("unlimited");
        press("/api/visits", Map.of("label", "B. C.", "place", "bench")).then().statusCode(201);
        press("/api/clients", Map.of("label", "B. C.")).then().statusCode(201);
        given(api()).get("/api/clients").then().statusCode(200).body("label", hasSize(1));
    }

    private void typedIsGivenBack(String address, String form, String typed) {
        given().baseUri(url)
                .config(RestAssuredConfig.config()
                        .encoderConfig(EncoderConfig.encoderConfig()
                                .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
                .contentType("application/x-www-form-urlencoded")
                .header("Origin", url)
                .body(form)
                .post(address)
                .then()
                .statusCode(503)
                .body(containsString(typed))
                .body(containsString("Not saved"));
    }

    private Response press(String path, Map<String, ?> body) {
        return given(api())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .body(body)
                .post(path);
    }

    private RequestSpecification api() {
        return given().baseUri(url).contentType("application/json").filter(Described.ANSWERS);
    }

    private void limit(String bytes) throws Exception {
        Process set = new ProcessBuilder(
                        "prlimit", "--pid", Long.toString(started.get(0).pid()), "--fsize=" + bytes + ":")
                .inheritIO()
                .start();
        assertThat(set.waitFor()).isZero();
    }
}
