package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import org.junit.jupiter.api.Test;

class AssetsTest {
    private static final Path FOLDER = Path.of("src/main/resources/rinsebell/web/assets");

    private final Assets assets = Assets.under("/assets");

    @Test
    void everyFileOfTheFolderIsServed() throws IOException {
        var served = new ArrayList<>(Assets.FILES);
        Assets.STYLES.forEach(name -> served.add("css/" + name + ".css"));
        try (var files = Files.walk(FOLDER)) {
            assertThat(files.filter(Files::isRegularFile)
                            .map(file -> FOLDER.relativize(file).toString()))
                    .containsExactlyInAnyOrderElementsOf(served);
        }
    }

    @Test
    void anAddressLeadsBackToItsFile() {
        var sheet = assets.at(assets.url("rinsebell.css")).orElseThrow();
        assertThat(sheet.type()).isEqualTo("text/css; charset=utf-8");
        assertThat(new String(sheet.bytes(), StandardCharsets.UTF_8)).contains("--ground:");
        assertThat(assets.url("main.js")).matches("/assets/[0-9a-f]{16}/main\\.js");
    }

    @Test
    void nothingElseIsThere() {
        assertThat(assets.at("/assets/0000000000000000/main.js")).isEmpty();
        assertThat(assets.at(assets.url("main.js") + "/../words.properties")).isEmpty();
        assertThatThrownBy(() -> assets.url("missing.js")).hasMessageContaining("missing.js");
    }

    /** The page may load nothing from anywhere else: not one address in style or script leaves the folder. */
    @Test
    void noFileNamesAnotherHost() throws IOException {
        try (var files = Files.walk(FOLDER)) {
            for (var file : files.filter(name -> name.toString().matches(".*\\.(css|js)"))
                    .toList()) {
                assertThat(Files.readString(file)).as(file.toString()).doesNotContain("//www.", "https:", "http:");
            }
        }
    }
}
