package rinsebell.app.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;

/** What was used on a day, over real HTTP; each answer is held against its description. */
class UseReadsTest {
    private final RunningSalon salon;
    private final Program program;

    UseReadsTest(@TempDir Path folder) {
        salon = new RunningSalon(folder);
        program = new Program(salon);
        program.press("/api/salon", Map.of("name", "Salon", "chairs", 2, "basins", 1, "zone", "Europe/Berlin"));
    }

    @AfterEach
    void end() {
        salon.close();
    }

    @Test
    void nothingIsToldOfADayOnWhichNothingWasMixed() {
        program.read("/api/use")
                .body("bowls", equalTo(0))
                .body("products", empty())
                .body("total.share", nullValue())
                .body("days", hasSize(28));
        for (String path : List.of("/api/use", "/api/use.csv", "/use")) {
            program.askAnyhow().queryParam("day", "2999-01-01").get(path).then().statusCode(404);
            program.askAnyhow().queryParam("day", "1700-01-01").get(path).then().statusCode(404);
            program.askAnyhow().queryParam("day", "today").get(path).then().statusCode(404);
        }
        program.ask().queryParam("day", "2025-01-01").get("/api/use").then().statusCode(200);
    }

    /** 30 g at 27.00 for 450 g are 1.80; half of it 0.90. Read again from disk it is the same. */
    @Test
    void aDaysUseIsTold() {
        Map<String, Object> powder = Shelf.powder();
        powder.put("name", "=1+1");
        long product = program.press("/api/products", powder);
        program.press("/api/products/" + product + "/price", Map.of("tubGrams", 450, "price", 27));
        long visit = program.press("/api/visits", Map.of("label", "+x", "place", "chair-1"));
        long bowl = program.press(
                "/api/bowls",
                Map.of("intent", "fact", "visit", visit, "portions", List.of(Map.of("product", product, "grams", 30))));
        program.press("/api/bowls/" + bowl + "/throw-away", Map.of("left", "half"));
        told(product, visit);
        salon.stop();
        salon.start();
        told(product, visit);
        var answer = program.ask().get("/api/use.csv");
        answer.then()
                .statusCode(200)
                .header("Content-Type", startsWith("text/csv"))
                .header("Content-Disposition", startsWith("attachment; filename=\"rinsebell-use-20"));
        assertThat(answer.asString().lines().toList().get(1)).endsWith("," + bowl + ",'=1+1,30,0.5,1.8,'+x");
    }

    private void told(long product, long visit) {
        program.read("/api/use")
                .body("bowls", equalTo(1))
                .body("told", equalTo(1))
                .body("products[0].product", equalTo((int) product))
                .body("products[0].sum.left", equalTo(15))
                .body("products[0].sum.share", equalTo(0.5f))
                .body("products[0].sum.cost.known", equalTo(1.8f))
                .body("products[0].sum.lost.known", equalTo(0.9f))
                .body("visits[0].visit", equalTo((int) visit))
                .body("days[27].share", equalTo(0.5f));
    }
}
