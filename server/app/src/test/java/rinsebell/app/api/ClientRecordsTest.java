package rinsebell.app.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.specification.RequestSpecification;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;
import rinsebell.app.shelf.InventedProducts;

/** Records of people who come again, by pages and by programs, over real HTTP and on a real disk. */
class ClientRecordsTest {

    private final Path folder;
    private final RunningSalon salon;
    private final Program program;

    ClientRecordsTest(@TempDir Path folder) {
        this.folder = folder;
        salon = new RunningSalon(folder);
        program = new Program(salon);
    }

    @BeforeEach
    void begin() {
        program.press("/api/salon", Map.of("name", "Salon", "chairs", 2, "basins", 1, "zone", "Europe/Berlin"));
    }

    @AfterEach
    void end() {
        salon.close();
    }

    @Test
    void anEmptySalonTakesTheInventedShelfOnce() {
        program.press("/api/shelf", Map.of());
        program.read("/api/products")
                .body("directions", hasSize(InventedProducts.all().size()));
        program.send("/api/shelf", Map.of()).statusCode(201).body("facts", empty());
        program.read("/api/products")
                .body("directions", hasSize(InventedProducts.all().size()));
    }

    /** By that number devices know that what they kept is void; after a start it is no other. */
    @Test
    void eachErasingIsToldWithEveryAnswerAndToOpenScreens() {
        int client = begins("M. A.", Program.freshId());
        assertThat(erasings("/")).isZero();
        erase(client);
        assertThat(erasings("/")).isEqualTo(1);
        erase(client);
        assertThat(erasings("/")).as("nothing was left to be erased").isEqualTo(1);
        assertThat(erasings("/device")).isEqualTo(1);
        assertThat(given(salon.request()).get("/feed/once?board=floor").asString())
                .contains("\"erased\":1");
        salon.stop();
        salon.start();
        assertThat(erasings("/")).isEqualTo(1);
    }

    private void erase(int client) {
        program.ask()
                .header("Idempotency-Key", Program.freshId())
                .body(Map.of())
                .post("/api/clients/" + client + "/erase")
                .then()
                .statusCode(204);
    }

    private int erasings(String page) {
        return Integer.parseInt(given(salon.request()).get(page).header("Rinsebell-Erased"));
    }

    @Test
    void whatWasMixedIsReadAtTheNextVisit() {
        int client = begins("M. A.", Program.freshId());
        program.press("/api/shelf", Map.of());
        long visit = program.press(
                "/api/visits", Map.of("label", "M. A.", "place", "chair-1", "client", client, "minutesAgo", 60));
        long bowl = program.press(
                "/api/bowls",
                Map.of("visit", visit, "reason", "first", "minutesAgo", 50, "portions", portions(), "intent", "fact"));
        onHead(visit, "put-on", Map.of("bowl", bowl, "area", "regrowth", "zone", "on-scalp", "minutesAgo", 45));
        onHead(visit, "discomfort", Map.of("grade", "tingling", "minutesAgo", 40));
        onHead(visit, "rinse", Map.of("basin", "A", "minutesAgo", 30));
        onHead(visit, "leave", Map.of());
        salon.stop();
        salon.start();
        program.read("/api/clients/" + client)
                .body("visits[0].id", equalTo((int) visit))
                .body("visits[0].complaints", contains("tingling"))
                .body("visits[0].bowls[0].portions.product", contains("Brimmow mild cream", "Brimmow developer 20 vol"))
                .body("visits[0].bowls[0].uses[0].minutes", equalTo(15));
        page("/clients/" + client)
                .body(containsString("60 g Brimmow mild cream"))
                .body(containsString("Tingling"));
    }

    private List<Map<String, Object>> portions() {
        return List.of(portion("Brimmow mild cream"), portion("Brimmow developer 20 vol"));
    }

    private Map<String, Object> portion(String name) {
        int product = program.read("/api/products").extract().path("find { it.directions.name == '" + name + "' }.id");
        return Map.of("product", product, "grams", 60);
    }

    private void onHead(long visit, String press, Map<String, Object> body) {
        var asFact = new java.util.HashMap<>(body);
        asFact.put("intent", "fact");
        program.press("/api/visits/" + visit + "/" + press, asFact);
    }

    @Test
    void theSamePressBeginsOneRecordAndAnotherLabelUnderItIsRefused() {
        String press = Program.freshId();
        int client = begins("שרה 💇", press);
        assertThat(begins("שרה 💇", press)).isEqualTo(client);
        program.send("/api/clients", Map.of("label", "Somebody else"), press).statusCode(422);
        program.send("/api/clients/find", Map.of("letters", "שר"), Program.freshId())
                .statusCode(200)
                .body("label", contains("שרה 💇"))
                .body("id", contains(client));
        program.send("/api/clients/find", Map.of("letters", "nobody"), Program.freshId())
                .statusCode(200)
                .body("", hasSize(0));
    }

    private int begins(String label, String press) {
        return program.send("/api/clients", Map.of("label", label), press)
                .statusCode(201)
                .extract()
                .path("client");
    }

    @Test
    void aReactionOnTheRecordIsKnownAtTheGate() {
        int client = begins("R. T.", Program.freshId());
        program.send("/api/clients/" + client + "/note", Map.of("kind", "reaction", "on", "2026-01-31"))
                .statusCode(204);
        program.read("/api/clients/" + client)
                .body("known.earlierReaction", equalTo("yes"))
                .body("notes.kind", contains("reaction"));
        page("/welcome?client=" + client).body(containsString("name=\"earlierReaction\" value=\"yes\" checked"));
        page("/welcome").body(not(containsString("value=\"yes\" checked")));
    }

    @Test
    void whatIsWrongIsToldAllAtOnce() {
        program.askAnyhow()
                .header("Idempotency-Key", Program.freshId())
                .body("{\"kind\":\"freckles\",\"on\":\"2999-01-01\"}")
                .post("/api/clients/1/note")
                .then()
                .statusCode(422)
                .body("errors.field", hasItems("kind", "on"));
        program.send("/api/clients/99/note", Map.of("kind", "reaction")).statusCode(404);
        program.send("/api/visits", Map.of("label", "x", "place", "bench", "client", 99))
                .statusCode(422)
                .body("errors.field", contains("client"));
        form(Map.of("label", "")).post("/clients").then().statusCode(422).body(containsString("id=\"label-problem\""));
        given(salon.request()).get("/clients/99").then().statusCode(404);
        given(salon.request()).get("/clients/x").then().statusCode(404);
    }

    @Test
    void aVisitsPageBeginsARecordAndLinksItInOnePress() {
        long visit = program.press("/api/visits", Map.of("label", "<b>Z</b>", "place", "chair-2"));
        program.read("/api/visits/" + visit).body("client", nullValue());
        form(Map.of("label", "<b>Z</b>", "visit", String.valueOf(visit), "press", Program.freshId()))
                .post("/clients")
                .then()
                .statusCode(303);
        program.read("/api/visits/" + visit).body("client", equalTo(1));
        page("/visits/" + visit + "/client")
                .body(containsString("&lt;b&gt;Z&lt;/b&gt;"))
                .body(containsString("Unlink"));
        form(Map.of("client", "")).post("/visits/" + visit + "/client").then().statusCode(303);
        program.read("/api/visits/" + visit).body("client", nullValue());
    }

    @Test
    void anErasedRecordIsNowhereAnyMore() throws Exception {
        int client = begins("Quillane", Program.freshId());
        program.send("/api/clients/" + client + "/note", Map.of("kind", "reaction"))
                .statusCode(204);
        long visit = program.press("/api/visits", Map.of("label", "Quillane", "place", "chair-1", "client", client));
        onHead(visit, "discomfort", Map.of("grade", "tingling", "note", "Quillane says so"));
        program.send("/api/clients/" + client + "/erase", Map.of())
                .statusCode(409)
                .body("code", equalTo("client-is-here"));
        page("/visits/" + visit).body(containsString("Quillane"));
        onHead(visit, "leave", Map.of());

        page("/clients/" + client).body(containsString("/clients/" + client + "/erase"));
        page("/clients/" + client + "/erase").body(containsString("Erase it for good"));
        form(Map.of("press", Program.freshId()))
                .post("/clients/" + client + "/erase")
                .then()
                .statusCode(303)
                .header("Location", equalTo("/clients?erased=now"));
        page("/clients?erased=now").body(containsString("The record is erased. Copies from before may hold it until"));
        nothingTellsOf("Quillane", client, visit);
        salon.stop();
        assertThat(database()).doesNotContain("Quillane").contains("CLIENT_NUMBER");
        try (var files = Files.walk(folder)) {
            for (Path text :
                    files.filter(file -> file.toString().endsWith(".txt")).toList()) {
                assertThat(text).content().doesNotContain("Quillane");
            }
        }
        salon.start();
        nothingTellsOf("Quillane", client, visit);
        program.send("/api/clients/" + client + "/erase", Map.of()).statusCode(204);
        program.send("/api/clients/" + (client + 1) + "/erase", Map.of()).statusCode(404);
        assertThat(begins("Quillane", Program.freshId())).isGreaterThan(client);
    }

    /** The journal holds no names, so whoever looks for them must read why they are missing. */
    @Test
    void aLostDatabaseIsTold() throws Exception {
        page("/day").body(not(containsString("made again from the journal")));
        program.read("/api/floor").body("rebuilt", nullValue());
        salon.stop();
        Files.delete(folder.resolve("rinsebell.mv.db"));
        salon.start();
        page("/day").body(containsString("made again from the journal"));
        page("/").body(not(containsString("made again from the journal")));
        program.read("/api/floor").body("rebuilt", notNullValue());
    }

    private void nothingTellsOf(String label, int client, long visit) {
        for (String path :
                List.of("/", "/day", "/desk", "/visits/" + visit, "/api/floor", "/api/log", "/api/clients")) {
            page(path).body(not(containsString(label)));
        }
        page("/visits/" + visit + "/client")
                .body(not(containsString(label)))
                .body(containsString("The record was erased"));
        page("/clients").body(not(containsString(label)));
        given(salon.request()).get("/clients/" + client).then().statusCode(404);
        given(salon.request()).get("/api/clients/" + client).then().statusCode(404);
    }

    /** Everything in the tables, as H2 writes it out. */
    private String database() throws Exception {
        StringBuilder all = new StringBuilder();
        try (var tables = DriverManager.getConnection("jdbc:h2:file:" + folder.resolve("rinsebell"), "sa", "");
                var rows = tables.createStatement().executeQuery("script")) {
            while (rows.next()) {
                all.append(rows.getString(1)).append('\n');
            }
        }
        return all.toString();
    }

    private io.restassured.response.ValidatableResponse page(String path) {
        return given(salon.request()).get(path).then().statusCode(200);
    }

    private RequestSpecification form(Map<String, String> fields) {
        return given().baseUri(salon.url())
                .redirects()
                .follow(false)
                .header("Origin", salon.url())
                .contentType("application/x-www-form-urlencoded; charset=utf-8")
                .formParams(fields);
    }
}
