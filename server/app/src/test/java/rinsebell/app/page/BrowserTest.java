package rinsebell.app.page;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;

/** The number that a browser is given with its first page (attributes: RFC 6265, section 4.1.2, and its SameSite). */
class BrowserTest {

    @TempDir
    private Path folder = Path.of("");

    private RunningSalon salon;

    @BeforeEach
    void aSalon() {
        salon = new RunningSalon(folder);
        given(salon.request())
                .header("Idempotency-Key", "the-salon-itself")
                .body(Map.of("name", "Harbour Lane", "chairs", 8, "basins", 2, "bench", 4, "zone", "UTC"))
                .post("/api/salon")
                .then()
                .statusCode(201);
    }

    @AfterEach
    void close() {
        salon.close();
    }

    @Test
    void theFirstPageGivesItAndLaterOnesLeaveIt() {
        String first = set("");
        assertThat(first).matches("browser=[0-9a-f]{32}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict");
        assertThat(set("")).isNotEqualTo(first);
        assertThat(set(first.substring(0, first.indexOf(';')))).isNull();
        assertThat(set("browser=somebody"))
                .as("instead of one that was never given")
                .isNotNull();
    }

    private String set(String cookie) {
        return given(salon.request())
                .header("Cookie", cookie)
                .get("/desk")
                .then()
                .statusCode(200)
                .extract()
                .header("Set-Cookie");
    }
}
