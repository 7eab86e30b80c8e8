package rinsebell.app.privacy;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.app.RunningSalon;
import rinsebell.app.door.Matter;
import rinsebell.web.privacy.Kept;

/** What the page says about people's data, of a running server. */
class PrivacyPageTest {

    private final Path folder;
    private final RunningSalon salon;

    PrivacyPageTest(@TempDir Path folder) {
        this.folder = folder;
        salon = new RunningSalon(folder);
    }

    @BeforeEach
    void begin() {
        send("/api/salon", Map.of("name", "Pepperbox Yard", "chairs", 2, "basins", 1, "zone", Noon.zone()));
    }

    @AfterEach
    void close() {
        salon.close();
    }

    private int send(String path, Map<String, ?> body) {
        var answer = given(salon.request())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .body(body)
                .post(path);
        assertThat(answer.statusCode()).as("%s: %s", path, answer.asString()).isIn(201, 204);
        return answer.statusCode();
    }

    private String page() {
        return given(salon.request())
                .get("/privacy")
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    /** What Art. 13 GDPR has people told where something is asked of them, and Art. 15 again: Regulation (EU) 2016/679. */
    @ParameterizedTest
    @CsvSource({
        "13 (1) (a) who answers for it, Pepperbox Yard keeps what is on this page",
        "13 (1) (c) what for, What for",
        "13 (1) (c) on what ground: left to the salon, on what ground",
        "13 (1) (e) who gets it, What goes out",
        "13 (1) (f) to where it is sent, It is sent to nobody",
        "13 (2) (a) for how long, 24 months after the last that is known of them",
        "13 (2) (a) for how long, and 90 days after",
        "13 (2) (b) access, A copy of everything about them",
        "13 (2) (b) rectification, That it is put right",
        "13 (2) (b) erasure, That it is erased",
        "13 (2) (b) restriction and objection, That it is used no more",
        "13 (2) (b) portability, as a file that programs can read",
        "13 (2) (c) consent taken back, anybody can take an answer back",
        "13 (2) (d) complaint, the authority for data protection where they live",
        "13 (2) (e) whether one must, Nobody has to answer",
        "13 (2) (f) automated decisions, it decides nothing about a person",
        "9 (1) special kinds, are about health",
        "17 erased: copies, are deleted after 14 days at the latest",
        "recital 26: who can still be known, may still know whose they were",
        "no advice, This page is no legal advice"
    })
    void itTellsWhatPeopleMustBeTold(String article, String said) {
        assertThat(page()).as(article).contains(said);
    }

    @Test
    void itGoesByTheHousesOwnNumbers() {
        send("/api/policy", Map.of("keeping", Map.of("recordMonths", 7, "textDays", 12)));
        assertThat(page())
                .contains("7 months after the last", "and 12 days after", "it happens 7 months after")
                .doesNotContain("24 months", "90 days");
        assertThat(given(salon.request()).get("/api/policy").<Integer>path("keeping.recordMonths"))
                .isEqualTo(7);
    }

    /** Every matter that it names is one of the table of rights, and whoever may is named as that table has it. */
    @Test
    void whoSeesItIsWhatTheTableOfRightsSays() {
        var matters = List.of(Matter.values());
        for (Kept kept : Kept.values()) {
            assertThat(matters).as("%s", kept).extracting(Matter::key).containsAll(kept.matters());
        }
        assertThat(page())
                .contains("stylist, desk, manager, by PIN (“Records of clients”)")
                .contains("manager, by PIN (“Reports, and files of them”)")
                .contains("whoever works at a device that is in (“The floor: seeing it, and recording what is done”)");
    }

    @Test
    void itTellsTheLastRunsAndHowFarCopiesGo() {
        assertThat(page()).contains("Nothing was erased yet");
        send("/api/clients", Map.of("label", "Quillane"));
        var answer = given(salon.request())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .body(Map.of())
                .post("/api/clients/1/erase");
        assertThat(answer.header("Rinsebell-Copies-Until")).matches("\\d{4}-\\d{2}-\\d{2}T.*Z");
        assertThat(page()).contains("Something was erased just now");
        salon.stop();
        salon.start();
        await().untilAsserted(() -> assertThat(page())
                .contains("0 records, 0 labels and notes, 0 sounded bells")
                .contains("May hold what was erased until")
                .doesNotContain("Quillane"));
        assertThat(filesWith("Quillane")).as("copies keep their time").allMatch(file -> file.startsWith("copies"));
        assertThat(given(salon.request()).get("/feed/once?board=floor").asString())
                .doesNotContain("Quillane");
    }

    private List<String> filesWith(String text) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith("in-use.lock"))
                    .filter(file -> holds(file, text))
                    .map(file -> folder.relativize(file).toString())
                    .toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static boolean holds(Path file, String text) {
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
