package rinsebell.db;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DataFolderTest {

    @TempDir
    Path parent;

    @Test
    void aFolderIsCreatedWhereItIsWanted() throws Exception {
        Path wanted = parent.resolve("a salon/with spaces and=signs");
        try (DataFolder folder = DataFolder.open(wanted)) {
            assertThat(folder.path()).isDirectory().isEqualTo(wanted);
        }
    }

    @Test
    void itCannotBeOpenedTwiceInOneProcess() throws Exception {
        try (DataFolder folder = DataFolder.open(parent)) {
            assertThatThrownBy(() -> DataFolder.open(folder.path()))
                    .isInstanceOf(FolderInUse.class)
                    .hasMessageContaining(parent.toString())
                    .hasMessageContaining("is in use by another Rinsebell");
        }
    }

    @Test
    void itCannotBeOpenedByASecondProcess() throws Exception {
        try (DataFolder folder = DataFolder.open(parent)) {
            assertThat(openedElsewhere(folder.path()))
                    .contains("in use by another Rinsebell (process "
                            + ProcessHandle.current().pid() + ")");
        }
        assertThat(openedElsewhere(parent)).contains("opened");
    }

    @Test
    void itCanBeOpenedAgainOnceItIsClosed() throws Exception {
        DataFolder.open(parent).close();
        DataFolder.open(parent).close();
    }

    @Test
    void aFileInItsPlaceIsNoFolder() throws Exception {
        Path file = Files.writeString(parent.resolve("file"), "not a folder");
        assertThatThrownBy(() -> DataFolder.open(file)).isInstanceOf(IOException.class);
    }

    private static String openedElsewhere(Path folder) throws IOException {
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        FolderOpener.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        return new String(other.getInputStream().readAllBytes(), UTF_8);
    }

    /** A process that opens a folder and says how that went. */
    static final class FolderOpener {

        private FolderOpener() {}

        public static void main(String[] args) throws Exception {
            try (DataFolder folder = DataFolder.open(Path.of(args[0]))) {
                System.out.println("opened " + folder.path());
            } catch (FolderInUse e) {
                System.out.println(e.getMessage());
            }
        }
    }
}
