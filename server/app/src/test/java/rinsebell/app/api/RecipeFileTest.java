package rinsebell.app.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.restassured.response.ValidatableResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.app.RunningSalon;

/**
 * Recipes that are kept, written to a file and taken in by another salon, over real HTTP. What a file may be is held
 * against the published schema by a validator of JSON Schema, draft 2020-12.
 */
class RecipeFileTest {
    private static final String CREAM = "Brimmow mild cream";
    private static final String DEVELOPER = "Brimmow developer 20 vol";

    private final RunningSalon salon;
    private final Program program;

    RecipeFileTest(@TempDir Path folder) {
        salon = new RunningSalon(folder);
        program = new Program(salon);
        opened();
    }

    private void opened() {
        program.press("/api/salon", Map.of("name", "Salon", "chairs", 2, "basins", 1, "zone", "Europe/Berlin"));
        program.press("/api/shelf", Map.of());
    }

    @AfterEach
    void end() {
        salon.close();
    }

    @Test
    void aFileIsTakenInByAnotherSalon(@TempDir Path other) {
        long recipe = keeps("Low tide", 60, 60.5);
        long dropped = keeps("Ebb", 30, 30);
        program.press("/api/recipes/" + dropped + "/drop", Map.of("dropped", true));
        var file = file("");
        assertThat(wrong(file)).isEmpty();
        program.read("/api/recipes/" + recipe).body("name", equalTo("Low tide")).body("version", equalTo(1));
        try (var elsewhere = new RunningSalon(other)) {
            var there = new Program(elsewhere);
            there.press("/api/salon", Map.of("name", "Quay", "chairs", 1, "basins", 1, "zone", "Europe/Berlin"));
            there.press(
                    "/api/products", Map.of("name", "Other", "kind", "developer", "zone", "off-scalp", "dye", false));
            there.press("/api/shelf", Map.of());
            takesIn(there, file).statusCode(201).body("facts", hasSize(1));
            there.read("/api/recipes")
                    .body("name", contains("Low tide"))
                    .body("[0].portions.name", contains(CREAM, DEVELOPER))
                    .body("[0].portions.grams", contains(60, 60.5f));
            takesIn(there, file).statusCode(201).body("facts", empty());
            there.read("/api/recipes").body("name", contains("Low tide")).body("[0].version", equalTo(1));
        }
    }

    @Test
    void aNameThatIsKnownBecomesANewVersion() {
        long recipe = keeps("Low tide", 60, 60);
        takesIn(program, file("").replace("60", "45")).statusCode(201).body("facts", hasSize(1));
        program.read("/api/recipes/" + recipe).body("version", equalTo(2)).body("portions.grams", contains(45, 45));
    }

    /** Of the published schema and of this server; neither lets in what the other refuses. */
    @ParameterizedTest
    @CsvSource({
        "{'kind': 'rinsebell-recipes-1'; 'recipes': []},                                     false",
        "{'kind': 'rinsebell-recipes-1'; 'recipes': [{'name': 'A'; 'portions': P}]},          true",
        "{'kind': 'rinsebell-recipes-1'; 'recipes': [{'name': 'A'; 'portions': P}]; 'x': 1},  false",
        "{'kind': 'other'; 'recipes': [{'name': 'A'; 'portions': P}]},                      false",
        "{'recipes': [{'name': 'A'; 'portions': P}]},                                       false",
        "{'kind': 'rinsebell-recipes-1'; 'recipes': [{'name': ''; 'portions': P}]},           false",
        "{'kind': 'rinsebell-recipes-1'; 'recipes': [{'name': 'A'; 'portions': []}]},         false",
        "{'kind': 'rinsebell-recipes-1'; 'recipes': [{'name': 'A'; 'portions': Z}]},          false"
    })
    void theSchemaSaysWhatIsTaken(String shorthand, boolean good) {
        var portion = "{'product': '%s', 'grams': %s}";
        var file = shorthand
                .replace(';', ',')
                .replace("P}", "[" + portion.formatted(CREAM, "0.1") + "]}")
                .replace("Z}", "[" + portion.formatted(CREAM, "0.09") + "]}")
                .replace('\'', '"');
        assertThat(wrong(file).isEmpty()).as("by the schema: %s", file).isEqualTo(good);
        assertThat(takesIn(program, file).extract().statusCode()).as(file).isEqualTo(good ? 201 : 422);
    }

    /** All or nothing, with what is wrong named where it stands. */
    @Test
    void nothingIsTakenInOfAFileInWhichSomethingIsWrong() {
        keeps("Low tide", 60, 60);
        var file = file("").replace("Low tide", "Spring tide").replace(DEVELOPER, "Nobody’s developer");
        takesIn(program, file)
                .statusCode(422)
                .body("errors.field", contains("recipes.0.portions.1.product"))
                .body("errors[0].detail", containsString("Nobody’s developer"));
        program.read("/api/recipes").body("name", contains("Low tide"));
    }

    @Test
    void theNamesOfAClientsRecipesGoWithTheirRecord() {
        long client = given(program.ask().header("Idempotency-Key", Program.freshId()))
                .body(Map.of("label", "M. A."))
                .post("/api/clients")
                .jsonPath()
                .getLong("client");
        long recipe = program.press(
                "/api/recipes", Map.of("name", "M. A. blond", "client", client, "portions", portions(60, 60)));
        assertThat(file("?client=" + client)).contains("M. A. blond");
        assertThat(file("")).doesNotContain("M. A.");
        given(program.ask().header("Idempotency-Key", Program.freshId()))
                .body(Map.of())
                .post("/api/clients/" + client + "/erase")
                .then()
                .statusCode(204);
        program.read("/api/recipes/" + recipe).body("name", equalTo(""));
        assertThat(file("?client=" + client)).doesNotContain("M. A.");
        salon.stop();
        salon.start();
        program.read("/api/recipes/" + recipe).body("name", equalTo(""));
    }

    private long keeps(String name, double cream, double developer) {
        return program.press("/api/recipes", Map.of("name", name, "portions", portions(cream, developer)));
    }

    private List<Map<String, Object>> portions(double cream, double developer) {
        return List.of(
                Map.of("product", numbered(CREAM), "grams", cream),
                Map.of("product", numbered(DEVELOPER), "grams", developer));
    }

    private int numbered(String product) {
        return program.read("/api/products").extract().path("find { it.directions.name == '" + product + "' }.id");
    }

    private String file(String query) {
        return program.ask().get("/api/recipe-file" + query).asString();
    }

    /** Good or bad. */
    private static ValidatableResponse takesIn(Program program, String file) {
        return program.askAnyhow()
                .header("Idempotency-Key", Program.freshId())
                .body(file)
                .post("/api/recipe-file")
                .then();
    }

    private List<?> wrong(String file) {
        var schema = program.ask().get("/api/recipe-file/schema").asString();
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(file, InputFormat.JSON);
    }
}
