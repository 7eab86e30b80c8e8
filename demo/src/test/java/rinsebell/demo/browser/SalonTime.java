package rinsebell.demo.browser;

import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import rinsebell.app.time.MachineTime;

/**
 * How far the salon's time is ahead of a count of milliseconds that nobody sets, by the quickest of some round trips.
 *
 * @param ahead in milliseconds
 * @param unsure half the round trip, in milliseconds
 */
record SalonTime(double ahead, double unsure) {
    private static final MachineTime MACHINE = new MachineTime();
    private static final int TRIPS = 8;
    private static final Pattern NOW = Pattern.compile("\"now\":(\\d+)");

    /** Milliseconds on a clock that nobody sets. */
    static double steadyMillis() {
        return MACHINE.monotonicNanos() / (double) TimeUnit.MILLISECONDS.toNanos(1);
    }

    /** Asks a server. */
    static SalonTime of(Asking server) {
        return IntStream.range(0, TRIPS)
                .mapToObj(trip -> trip(server))
                .min(Comparator.comparingDouble(SalonTime::unsure))
                .orElseThrow();
    }

    private static SalonTime trip(Asking server) {
        var begin = steadyMillis();
        var told = NOW.matcher(server.page("/clock"));
        var end = steadyMillis();
        if (!told.find()) {
            throw new IllegalStateException("/clock tells no time");
        }
        return new SalonTime(Long.parseLong(told.group(1)) - (begin + end) / 2, (end - begin) / 2);
    }

    /** The salon's time, in milliseconds since 1970, at this count. */
    double at(double steadyMillis) {
        return steadyMillis + ahead;
    }
}
