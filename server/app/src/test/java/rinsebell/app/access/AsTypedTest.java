package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;

/** A PIN counts as it was typed, whole and as it is, and nobody sees it (OWASP ASVS 5.0, 6.2.6 and 6.2.8). */
class AsTypedTest {
    private static final String LONGEST = "402917365820";

    @Test
    void aPinCountsAsItWasTyped(@TempDir Path folder) {
        try (var salon = new RunningSalon(folder)) {
            var own = Tablet.atTheServer(salon);
            own.program("/api/salon", Map.of("name", "P", "chairs", 2, "basins", 1, "bench", 1, "zone", "UTC"));
            own.program("/api/staff", Map.of("name", "Mara", "role", "manager"));
            var chosen = own.post("/pins/2", Map.of("current", "", "fresh", LONGEST, "again", LONGEST));
            assertThat(chosen.statusCode()).isEqualTo(303);
            assertThat(unlock(own, LONGEST.substring(0, 8))).isEqualTo(403);
            assertThat(unlock(own, LONGEST + "1")).isEqualTo(403);
            assertThat(unlock(own, " " + LONGEST)).isEqualTo(403);
            assertThat(unlock(own, LONGEST)).isEqualTo(303);
            var page = own.get("/pins/2").asString();
            assertThat(page.split("type=\"password\"", -1))
                    .as("the one of now and the new one twice")
                    .hasSize(4);
            assertThat(page).doesNotContain("onpaste", LONGEST);
        }
    }

    private static int unlock(Tablet tablet, String pin) {
        return tablet.post("/unlock", Map.of("person", "2", "pin", pin)).statusCode();
    }
}
