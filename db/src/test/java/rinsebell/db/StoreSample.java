package rinsebell.db;

import static rinsebell.floor.testing.Saturday.TEN;

import java.nio.file.Path;

/** A store in a folder, for the length of one act. */
final class StoreSample {

    private StoreSample() {}

    interface Act {
        void with(SalonStore store) throws Exception;
    }

    static void with(Path path, Act act) throws Exception {
        try (DataFolder folder = DataFolder.open(path);
                SalonStore store = SalonStore.open(folder, TEN)) {
            act.with(store);
        }
    }
}
