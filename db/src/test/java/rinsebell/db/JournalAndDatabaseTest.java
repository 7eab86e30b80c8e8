package rinsebell.db;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.testing.Saturday;

/** The contract, kept by a journal and an H2 file in a real folder. */
final class JournalAndDatabaseTest extends StorageContract {

    @TempDir
    Path path;

    private @Nullable DataFolder folder;

    @Override
    SalonStore open() throws IOException {
        closeFolder();
        DataFolder opened = DataFolder.open(path);
        folder = opened;
        return SalonStore.open(opened, Saturday.TEN);
    }

    @AfterEach
    void closeFolder() throws IOException {
        if (folder != null) {
            folder.close();
        }
    }
}
