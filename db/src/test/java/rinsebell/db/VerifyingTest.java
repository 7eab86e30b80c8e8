package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Where.onScalp;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;

/** What somebody changes by hand is found, wherever it stands. Hashes of lines are reckoned here a second time. */
final class VerifyingTest {

    private static final Story STORY = Story.begins();

    @TempDir
    static Path morning;

    @TempDir
    Path path;

    @BeforeAll
    static void aMorningWithACopy() throws Exception {
        Head here = STORY.at("09:00").arrivesFine();
        here.puts(STORY.mixes(g(60, MILD_CREAM), g(60, DEV20)), onScalp(Area.REGROWTH));
        with(morning, store -> {
            Told.save(store, STORY.facts());
            store.trail().keep(List.of(step(7), step(8), step(9)));
            store.copies().make(TEN);
        });
    }

    @BeforeEach
    void asItWasLeft() throws Exception {
        try (var all = Files.walk(morning)) {
            for (Path one : (Iterable<Path>) all.skip(1)::iterator) {
                Files.copy(one, path.resolve(morning.relativize(one).toString()));
            }
        }
    }

    private void withoutCopies() throws Exception {
        try (var copies = Files.list(path.resolve("copies"))) {
            for (Path copy : (Iterable<Path>) copies::iterator) {
                Files.delete(copy);
            }
        }
    }

    private static Trail.Step step(long client) {
        return new Trail.Step(TEN, "device-2", new StaffId(3), "HISTORY", "GET /clients/{id}", client, 200);
    }

    private Verified verified() throws Exception {
        try (DataFolder folder = DataFolder.open(path)) {
            return Verifying.of(folder);
        }
    }

    private void byHand(String sql) throws SQLException {
        try (var connection = DriverManager.getConnection(
                        "jdbc:h2:file:" + path.toAbsolutePath().resolve("rinsebell"), "sa", "");
                var statement = connection.createStatement()) {
            assertThat(statement.executeUpdate(sql)).isPositive();
        }
    }

    private Path journal() throws Exception {
        try (var files = Files.list(path.resolve("journal"))) {
            return files.findFirst().orElseThrow();
        }
    }

    @Test
    void whatTheProgramWroteIsSound() throws Exception {
        Verified found = verified();
        assertThat(found.faults()).isEmpty();
        assertThat(found.end().lines()).isEqualTo(STORY.facts().size());
        assertThat(found.steps()).isEqualTo(3);
        assertThat(found.copies()).isEqualTo(1);
        List<String> lines = Files.readAllLines(journal());
        assertThat(found.end().hash()).isEqualTo(sha256(lines.get(lines.size() - 1)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update fact set happened_ms = happened_ms - 60000 where seq = 5",
                "update fact set by_staff = 4 where seq = 5",
                "update fact set body = '{}' where seq = (select max(seq) from fact)",
                "update fact set stream = 'salon' where seq = (select max(seq) from fact)",
                "update press set device = 'device-9' where id = (select press_id from fact where seq = 5)",
                "update press set outcome = outcome || ' ' where id = (select press_id from fact where seq = 5)",
                "delete from fact where seq = 5",
                "delete from press where id = (select press_id from fact where seq = 5)",
                "update journal_mark set lines = lines - 1",
                "update trail set subject = 17 where id = 2",
                "update trail set staff = null where id = 3",
                "delete from trail where id = 2",
            })
    void aRowThatWasChanged(String sql) throws Exception {
        byHand(sql);
        assertThat(verified().faults()).isNotEmpty();
    }

    @Test
    void aLineThatWasChangedWithItsChecksum() throws Exception {
        List<String> lines = Files.readAllLines(journal());
        String changed = lines.get(4).replaceFirst("\"happened_ms\":\\d", "\"happened_ms\":2");
        assertThat(changed).isNotEqualTo(lines.get(4));
        lines.set(4, checked(changed));
        Files.writeString(journal(), String.join("\n", lines) + "\n");
        assertThat(verified().faults())
                .satisfiesExactly(
                        fault -> assertThat(fault).contains("row of fact 5"),
                        fault -> assertThat(fault).contains("journal is damaged", "line 6"));
    }

    /** The last line has none behind it that names its hash; the database does. */
    @Test
    void theLastLine() throws Exception {
        withoutCopies();
        List<String> lines = Files.readAllLines(journal());
        int last = lines.size() - 1;
        lines.set(last, checked(lines.get(last).replaceFirst("\"recorded_ms\":\\d", "\"recorded_ms\":2")));
        Files.writeString(journal(), String.join("\n", lines) + "\n");
        assertThat(verified().faults()).anyMatch(fault -> fault.contains("another journal"));
    }

    /** Whoever can write everything anew makes all fit, but for what was copied before. */
    @Test
    void aCopyRemembersWhatWas() throws Exception {
        List<String> lines = Files.readAllLines(journal());
        int last = lines.size() - 1;
        lines.set(last, checked(lines.get(last).replaceFirst("\"recorded_ms\":\\d", "\"recorded_ms\":2")));
        Files.writeString(journal(), String.join("\n", lines) + "\n");
        byHand("update journal_mark set hash = '" + sha256(lines.get(last)) + "'");
        byHand("update fact set recorded_ms = cast('2' || substr(recorded_ms, 2) as bigint) where seq = "
                + lines.size());
        assertThat(verified().faults()).singleElement().asString().contains("copy", "other facts");
    }

    private static String sha256(String line) throws Exception {
        return java.util.HexFormat.of()
                .formatHex(java.security.MessageDigest.getInstance("SHA-256").digest(line.getBytes("UTF-8")));
    }

    /** The line with its checksum reckoned anew: "j1", eight hexadecimal digits, and what they check. */
    private static String checked(String line) throws Exception {
        CRC32C sum = new CRC32C();
        sum.update(line.substring(12).getBytes("UTF-8"));
        return "j1 %08x ".formatted(sum.getValue()) + line.substring(12);
    }
}
