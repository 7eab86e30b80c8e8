package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DatabaseTest {

    @TempDir
    Path folder;

    @Test
    void aFolderOfAnyNameHoldsItAndItOpensAgain() throws Exception {
        Path name = folder.resolve("a=b c ü").resolve("x");
        for (int time = 1; time <= 2; time++) {
            try (Database database = Database.open(name)) {
                assertThat(lines(database)).isZero();
            }
        }
        assertThat(folder.resolve("a=b c ü/x.mv.db")).exists();
    }

    private static long lines(Database database) {
        return database.jdbi()
                .withHandle(handle -> handle.createQuery("select lines from journal_mark")
                        .mapTo(Long.class)
                        .one());
    }
}
