package rinsebell.app.privacy;

import java.time.ZoneOffset;
import rinsebell.app.time.MachineTime;

/** A salon's day turns at four in the morning, and a test whose visit began before that would be of two days. */
final class Noon {

    private Noon() {}

    /** A zone in which it is about noon whenever the test runs; signs are the other way round in such names. */
    static String zone() {
        int ahead = 12 - new MachineTime().wall().atZone(ZoneOffset.UTC).getHour();
        return "Etc/GMT" + (ahead < 0 ? "+" : "-") + Math.abs(ahead);
    }
}
