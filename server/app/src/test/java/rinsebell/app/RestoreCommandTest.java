package rinsebell.app;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A copy that a running server made is checked, restored by command, and served again. */
class RestoreCommandTest {

    @TempDir
    private Path folder = Path.of("");

    private final StringWriter said = new StringWriter();

    @Test
    void whatACopyHoldsIsServedAgainFromANewFolder() throws Exception {
        Path data = folder.resolve("data");
        String before;
        try (RunningSalon salon = new RunningSalon(data)) {
            Awaitility.await().until(() -> copies(data).size() == 1);
            press(
                    salon,
                    "/api/salon",
                    Map.of("name", "Harbour Lane", "chairs", 8, "basins", 2, "bench", 4, "zone", "UTC"));
            press(salon, "/api/visits", Map.of("label", "M. A.", "place", "bench"));
            before = visits(salon);
        }
        Files.delete(copies(data).get(0));
        new RunningSalon(data).close();
        Path copy = copies(data).get(0);

        assertThat(run("check", copy.toString())).isZero();
        assertThat(said.toString()).contains("a whole copy: ").contains("2 labels and notes; 0 client records");
        assertThat(run("restore", "--data", folder.resolve("new").toString(), "--from", copy.toString()))
                .isZero();
        try (RunningSalon salon = new RunningSalon(folder.resolve("new"))) {
            assertThat(visits(salon)).isEqualTo(before).contains("M. A.");
            assertThat(given(salon.request()).get("/day").asString()).contains("restored from a copy that goes up to");
        }
    }

    @Test
    void whatCanNotBeRestoredIsExplained() throws Exception {
        Path broken = Files.writeString(folder.resolve("broken.sql.gz"), "no copy");
        assertThat(run("check", broken.toString())).isEqualTo(1);
        assertThat(run("restore", "--data", folder.resolve("new").toString(), "--from", broken.toString()))
                .isEqualTo(1);
        assertThat(run("restore", "--data", folder.toString(), "--from", broken.toString()))
                .isEqualTo(1);
        assertThat(said.toString())
                .contains("broken.sql.gz can't be used: the file is damaged or no copy")
                .contains("Nothing was restored from")
                .contains("is not empty")
                .doesNotContain("\tat ");
        assertThat(run("restore", "--data", "x")).isEqualTo(2);
    }

    private int run(String... arguments) {
        PrintWriter to = new PrintWriter(said, true);
        return new CommandLine(new Main()).setOut(to).setErr(to).execute(arguments);
    }

    private static List<Path> copies(Path data) throws Exception {
        if (!Files.isDirectory(data.resolve("copies"))) {
            return List.of();
        }
        try (var files = Files.list(data.resolve("copies"))) {
            return files.filter(file -> file.toString().endsWith(".sql.gz")).toList();
        }
    }

    private static void press(RunningSalon salon, String path, Map<String, Object> body) {
        given(salon.request())
                .header("Idempotency-Key", "press-of-" + body.size() + "-fields-and-more")
                .body(body)
                .post(path)
                .then()
                .statusCode(201);
    }

    private static String visits(RunningSalon salon) {
        return given(salon.request()).get("/api/visits").asString();
    }
}
