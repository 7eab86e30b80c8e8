package rinsebell.app.privacy;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;
import rinsebell.db.journal.Journal;

/** An erasure takes a name away and no figure: reports, and the chain over the journal, are what they were. */
class StatisticsTest {

    private static final List<String> FIGURES =
            List.of("/api/use", "/api/use.csv", "/api/lead", "/api/lead.csv", "/use", "/lead");

    private final Path folder;
    private final RunningSalon salon;

    StatisticsTest(@TempDir Path folder) {
        this.folder = folder;
        salon = new RunningSalon(folder);
    }

    @AfterEach
    void close() {
        salon.close();
    }

    @Test
    void figuresAndTheChainAreTheSameAfterAnErasure() throws Exception {
        send("/api/salon", Map.of("name", "Salon", "chairs", 2, "basins", 1, "zone", Noon.zone()));
        send("/api/shelf", Map.of());
        send("/api/clients", Map.of("label", "Quillane"));
        aVisit();
        Map<String, String> before = figures();
        assertThat(before.get("/api/use")).contains("60");
        byte[] journal = journal();

        send("/api/clients/1/erase", Map.of());

        assertThat(figures()).isEqualTo(before);
        assertThat(journal()).as("no byte of what happened").isEqualTo(journal);
        salon.stop();
        assertThat(Journal.verify(folder.resolve("journal")).end().lines()).isPositive();
        salon.start();
        assertThat(figures()).as("after a start").isEqualTo(before);
        assertThat(new String(journal, java.nio.charset.StandardCharsets.UTF_8)).doesNotContain("Quillane");
    }

    private void aVisit() {
        long visit =
                send("/api/visits", Map.of("label", "Quillane", "place", "chair-1", "client", 1, "minutesAgo", 60));
        Integer product = given(salon.request()).get("/api/products").path("id[0]");
        long bowl = send(
                "/api/bowls",
                asFact(Map.of(
                        "visit",
                        visit,
                        "reason",
                        "first",
                        "minutesAgo",
                        50,
                        "portions",
                        List.of(Map.of("product", product, "grams", 60)))));
        String on = "/api/visits/" + visit;
        send(on + "/put-on", asFact(Map.of("bowl", bowl, "area", "regrowth", "zone", "on-scalp", "minutesAgo", 45)));
        send(on + "/discomfort", asFact(Map.of("grade", "tingling", "note", "Quillane says so", "minutesAgo", 40)));
        send(on + "/rinse", asFact(Map.of("basin", "A", "minutesAgo", 30)));
        send("/api/bowls/" + bowl + "/throw-away", asFact(Map.of("minutesAgo", 20)));
        send(on + "/leave", asFact(Map.of()));
    }

    private static Map<String, Object> asFact(Map<String, ?> body) {
        var asFact = new HashMap<String, Object>(body);
        asFact.put("intent", "fact");
        return asFact;
    }

    private long send(String path, Map<String, ?> body) {
        var answer = given(salon.request())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .body(body)
                .post(path);
        assertThat(answer.statusCode()).as("%s: %s", path, answer.asString()).isIn(201, 204);
        List<Number> facts = answer.statusCode() == 204 ? null : answer.path("facts");
        return facts == null || facts.isEmpty() ? 0 : facts.get(0).longValue();
    }

    /** Without the name, what stands for one that is gone, and what each page has anew: its number, the instant, an id. */
    private Map<String, String> figures() {
        var figures = new LinkedHashMap<String, String>();
        for (String path : FIGURES) {
            String told = given(salon.request())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            figures.put(
                    path,
                    told.replaceAll("(?s)^.*<main", "")
                            .replaceAll("data-[a-z]+=\"[^\"]*\"|value=\"[0-9a-f-]{36}\"", "")
                            .replaceAll("\"until\":\"[^\"]*\"", "")
                            .replaceAll("Quillane|no name", "…"));
        }
        return figures;
    }

    private byte[] journal() throws Exception {
        try (Stream<Path> files = Files.list(folder.resolve("journal"))) {
            return Files.readAllBytes(files.sorted().findFirst().orElseThrow());
        }
    }
}
