package rinsebell.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;
import rinsebell.db.DataFolder;
import rinsebell.db.SalonStore;
import rinsebell.floor.Ledger;

/** Writes the invented day into a data folder that holds nothing yet; what somebody pressed there since stays. */
final class FirstDay {
    private FirstDay() {}

    /**
     * @param now the instant that the day has come to
     * @throws IOException when the folder can't be read or written
     */
    static void tellIn(Path data, Instant now, ZoneId zone) throws IOException {
        if (isEmpty(data)) {
            try (var folder = DataFolder.open(data);
                    var store = SalonStore.open(folder, now)) {
                Regulars.enterIn(store.clients(), now.atZone(zone).toLocalDate());
                store.append(Saturday.until(now, zone));
            } catch (Ledger.NotSaved e) {
                throw new IOException("the demo's day could not be saved in " + data, e);
            }
            // A machine that takes its time over the start has had no outage.
            new AliveMarker(data)
                    .write(SalonClock.startingAtTheWall(new MachineTime(), 1).mark());
        }
    }

    private static boolean isEmpty(Path data) throws IOException {
        if (!Files.exists(data)) {
            return true;
        }
        try (var inside = Files.list(data)) {
            return inside.findAny().isEmpty();
        }
    }
}
