package rinsebell.demo.browser;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import rinsebell.app.time.MachineTime;
import rinsebell.db.DataFolder;
import rinsebell.db.SalonStore;
import rinsebell.demo.BusyDay;
import rinsebell.floor.Ledger;

/** Data folders of salons in which a rinse of each head begins to ring, one after the other. */
final class BusySalon {
    private BusySalon() {}

    /**
     * Writes one.
     *
     * @param first how long from now the first rings
     * @param apart how long after it each further one
     * @return the folder
     */
    static Path in(Path folder, int heads, Duration first, Duration apart) throws IOException, Ledger.NotSaved {
        var now = Instant.ofEpochMilli(new MachineTime().wallMillis());
        var day = BusyDay.rinsing(heads, now, ZoneId.of("Etc/UTC"), first, apart);
        try (var data = DataFolder.open(folder);
                var store = SalonStore.open(data, now)) {
            store.append(day.entries());
        }
        return folder;
    }
}
