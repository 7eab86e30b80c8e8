package rinsebell.app.privacy;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;
import rinsebell.app.time.MachineTime;

/**
 * GDPR, Art. 15 (3) and 20 (1), from memory: whoever something is kept about gets a copy of it, and gets it in a form that
 * machines read. Whether it is all of it is asked of the tables themselves.
 */
class EverythingTest {

    /** How a row of each table belongs to a client; a table that is not here must belong to none. */
    private static final Map<String, String> LEADS_TO_A_CLIENT = Map.ofEntries(
            Map.entry("CLIENT", "id = 1"),
            Map.entry("CLIENT_NOTE", "client_id = 1"),
            // The last is of whoever asked, and kept once they are answered.
            Map.entry("TRAIL", "matter in ('HISTORY', 'ERASING') and subject = 1 and id < (select max(id) from trail)"),
            Map.entry("VISIT", "client_id = 1"),
            Map.entry("BOWL", ofVisit()),
            Map.entry("PORTION", ofVisit()),
            Map.entry("APPLICATION", ofVisit()),
            Map.entry("HEAT", ofVisit()),
            Map.entry("STRAND_CHECK", ofVisit()),
            Map.entry("SCALP_CHECK", ofVisit()),
            Map.entry("COMPLAINT", ofVisit()),
            Map.entry("FACT", "stream in (select concat('visit ', id) from visit where client_id = 1)"),
            Map.entry(
                    "TEXT",
                    "fact_seq in (select seq from fact where stream in (select concat('visit ', id) from visit where client_id = 1))"));

    private static final Set<String> LEADS_TO_NONE = Set.of(
            // What the program tells of itself.
            "JOURNAL_MARK",
            "REBUILD",
            "CLIENT_NUMBER",
            "RETENTION",
            "COMPACTION",
            "flyway_schema_history",
            // By a bell's number and a device, for reports alone; the bell's facts are in the log.
            "SOUNDED",
            // Links that look in are nobody's.
            "LOOK_IN",
            // What a press was answered, which is what its facts say; a fingerprint of what was typed.
            "PRESS");

    /** What the program needs to work, and says nothing about anybody that another column does not say. */
    private static final Set<String> OF_THE_PROGRAM = Set.of(
            // Which press it came by.
            "CLIENT.PRESS_ID",
            "FACT.PRESS_ID",
            // How a fact is written; it is given out as it reads.
            "FACT.BODY",
            "FACT.KIND",
            "FACT.VERSION",
            "FACT.STREAM",
            // The chain of rows, for whoever verifies it.
            "TRAIL.ID",
            "TRAIL.BEFORE_HASH",
            "TRAIL.HASH",
            // Places in a row.
            "PORTION.PLACE");

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Path folder;
    private final RunningSalon salon;

    EverythingTest(@TempDir Path folder) {
        this.folder = folder;
        salon = new RunningSalon(folder);
    }

    private static String ofVisit() {
        return "visit_id in (select id from visit where client_id = 1)";
    }

    /** A visit in which every column of every table has something to say, and another client whose data are not theirs. */
    @BeforeEach
    void aFullVisit() {
        press("/api/salon", Map.of("name", "Pepperbox Yard", "chairs", 3, "basins", 2, "zone", Noon.zone()));
        press("/api/shelf", Map.of());
        long one = press("/api/staff", Map.of("name", "Ottoline"));
        long two = press("/api/staff", Map.of("name", "Bertram"));
        press("/api/clients", Map.of("label", "Quillane"));
        press("/api/clients", Map.of("label", "Wrenna"));
        press("/api/clients/1/note", Map.of("kind", "reaction", "on", "2026-01-31"));
        press("/api/recipes", Map.of("name", "Quillane gold", "client", 1, "portions", portions(30)));
        press("/api/recipes", Map.of("name", "Wrenna ash", "client", 2, "portions", portions(40)));
        visit(2, "Wrenna", one, two, "said by Wrenna");
        visit(1, "Quillane", one, two, "said by Quillane");
        given(salon.request()).cookie("who", one).get("/clients/1").then().statusCode(200);
    }

    private void visit(int client, String label, long stylist, long helper, String note) {
        long visit = press(
                "/api/visits",
                Map.of(
                        "label",
                        label,
                        "place",
                        "chair-" + client,
                        "client",
                        client,
                        "stylist",
                        stylist,
                        "helper",
                        helper,
                        "minutesAgo",
                        90));
        on(
                visit,
                "gate",
                Map.of(
                        "skinTest",
                        "no-reaction",
                        "skinTestOn",
                        threeDaysAgo(),
                        "scalp",
                        "fine",
                        "earlierReaction",
                        "no",
                        "metal",
                        "none",
                        "under16",
                        "no"));
        long bowl = press(
                "/api/bowls",
                Map.of(
                        "visit",
                        visit,
                        "reason",
                        "first",
                        "minutesAgo",
                        80,
                        "portions",
                        portions(60),
                        "intent",
                        "fact"));
        long on = on(
                visit,
                "put-on",
                Map.of("bowl", bowl, "area", "regrowth", "zone", "on-scalp", "cover", "film", "minutesAgo", 75));
        on(visit, "last-on", Map.of("application", on, "minutesAgo", 70));
        on(visit, "heat-on", Map.of("heat", "gentle-steam", "minutesAgo", 65));
        on(visit, "heat-off", Map.of("minutesAgo", 60));
        on(
                visit,
                "strand",
                Map.of(
                        "application",
                        on,
                        "level",
                        7,
                        "tone",
                        "yellow",
                        "stretch",
                        "stretches-well",
                        "dryness",
                        "moist",
                        "decision",
                        "5",
                        "minutesAgo",
                        55));
        on(visit, "scalp", Map.of("finding", "fine", "decision", "5", "minutesAgo", 50));
        on(visit, "discomfort", Map.of("grade", "tingling", "note", note, "minutesAgo", 45));
        on(visit, "rinse", Map.of("basin", "A", "by", stylist, "minutesAgo", 40));
        press("/api/bowls/" + bowl + "/throw-away", Map.of("minutesAgo", 30));
        on(visit, "leave", Map.of());
    }

    private static String threeDaysAgo() {
        return new MachineTime().wall().minus(Duration.ofDays(3)).toString().substring(0, 10);
    }

    private List<Map<String, Object>> portions(int grams) {
        List<Integer> products = given(salon.request()).get("/api/products").path("id");
        return List.of(Map.of("product", products.get(0), "grams", grams));
    }

    private long on(long visit, String press, Map<String, Object> body) {
        var asFact = new HashMap<>(body);
        asFact.put("intent", "fact");
        return press("/api/visits/" + visit + "/" + press, asFact);
    }

    private long press(String path, Map<String, ?> body) {
        var answer = given(salon.request())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .body(body)
                .post(path);
        assertThat(answer.statusCode()).as("%s: %s", path, answer.asString()).isIn(201, 204);
        if (answer.statusCode() == 204) {
            return 0;
        }
        List<Number> facts = answer.path("facts");
        return facts == null || facts.isEmpty() ? 0 : facts.get(0).longValue();
    }

    @AfterEach
    void close() {
        salon.close();
    }

    @Test
    void everyColumnThatLeadsToAClientIsInTheirFile() throws Exception {
        salon.stop();
        salon.start();
        await().untilAsserted(() -> assertThat(
                        given(salon.request()).get("/api/clients/1/export").asString())
                .as("each day's look at what is past its time meets it")
                .contains("metAt"));
        Set<String> told = new HashSet<>();
        leaves(JSON.readTree(given(salon.request()).get("/api/clients/1/export").asString()), told);
        salon.stop();
        var softly = new SoftAssertions();
        try (var tables = DriverManager.getConnection("jdbc:h2:file:" + folder.resolve("rinsebell"), "sa", "")) {
            for (String table :
                    names(tables, "select table_name from information_schema.tables where table_schema = 'PUBLIC'")) {
                String rows = LEADS_TO_A_CLIENT.get(table);
                softly.assertThat(rows != null || LEADS_TO_NONE.contains(table))
                        .as("whether %s is about clients, nobody has said", table)
                        .isTrue();
                if (rows != null) {
                    columnsAreTold(tables, table, rows, told, softly);
                }
            }
        }
        softly.assertAll();
    }

    private static void columnsAreTold(
            Connection tables, String table, String rows, Set<String> told, SoftAssertions softly) throws SQLException {
        for (String column : names(
                tables,
                "select column_name from information_schema.columns where table_schema = 'PUBLIC' and table_name = '"
                        + table + "'")) {
            String name = table + "." + column;
            if (!OF_THE_PROGRAM.contains(name)) {
                var values = names(
                        tables,
                        "select distinct \"" + column + "\" from " + table + " where (" + rows + ") and \"" + column
                                + "\" is not null");
                softly.assertThat(values)
                        .as("%s has nothing to say in this test", name)
                        .isNotEmpty();
                for (String value : values) {
                    softly.assertThat(told).as("%s: %s", name, value).containsAnyElementsOf(asTold(column, value));
                }
            }
        }
    }

    /** An instant reads as ISO 8601, a constant as its code, a length of time as minutes, a look again as its minutes. */
    private static List<String> asTold(String column, String value) {
        var forms =
                new ArrayList<>(List.of(value, value.toLowerCase(Locale.ROOT).replace('_', '-')));
        if (column.endsWith("_MS") && value.matches("\\d+")) {
            forms.add(Instant.ofEpochMilli(Long.parseLong(value)).toString());
            forms.add(String.valueOf(Long.parseLong(value) / 60_000));
        }
        if (value.equals("LOOK_AGAIN")) {
            forms.add("5");
        }
        if (value.matches("\\d+\\.\\d+")) {
            forms.add(new java.math.BigDecimal(value).stripTrailingZeros().toPlainString());
        }
        return forms;
    }

    private static Set<String> names(Connection tables, String query) throws SQLException {
        Set<String> names = new TreeSet<>();
        try (var statement = tables.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return names;
    }

    private static void leaves(JsonNode node, Set<String> told) {
        if (node.isValueNode()) {
            told.add(node.isNumber() ? node.decimalValue().stripTrailingZeros().toPlainString() : node.asText());
        } else {
            node.forEach(child -> leaves(child, told));
        }
    }

    /** Art. 15 (4): somebody else's data are not given out with it. */
    @Test
    void nothingOfAnotherClientIsInIt() {
        for (String path : List.of("/api/clients/1/export", "/clients/1/export")) {
            assertThat(given(salon.request()).get(path).asString())
                    .contains("Quillane", "said by Quillane", "Quillane gold", "Ottoline", "Pepperbox Yard")
                    .doesNotContain("Wrenna");
        }
        assertThat(given(salon.request()).get("/clients/1/export").asString())
                .contains("60 g", "Tingling", "2026-01-31");
    }

    @Test
    void theFileNamesNobodyAndIsKeptByNoBrowser() {
        var answer = given(salon.request()).get("/api/clients/1/export");
        assertThat(answer.header("Content-Disposition")).isEqualTo("attachment; filename=\"rinsebell-client-1.json\"");
        assertThat(answer.header("Cache-Control")).contains("no-store");
        assertThat(given(salon.request()).get("/clients/1/export").header("Cache-Control"))
                .contains("no-store");
        assertThat(given(salon.request()).get("/api/clients/9/export").statusCode())
                .isEqualTo(404);
    }

    @Test
    void whatIsErasedHasNoFile() {
        press("/api/clients/1/erase", Map.of());
        assertThat(given(salon.request()).get("/api/clients/1/export").statusCode())
                .isEqualTo(404);
        assertThat(given(salon.request()).get("/clients/1/export").statusCode()).isEqualTo(404);
    }
}
