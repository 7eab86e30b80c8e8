package rinsebell.app.time;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.OptionalLong;

/**
 * The clocks of this machine: the only class that reads them.
 *
 * <p>Uptime and boot id come from {@code /proc} as proc(5) describes; on systems without it both are absent, and the
 * salon's clock then cannot tell a wake from a step and asks a person.
 */
public final class MachineTime implements TimeSources {

    private static final Path UPTIME = Path.of("/proc/uptime");
    private static final Path BOOT_ID = Path.of("/proc/sys/kernel/random/boot_id");

    private final String bootId = read(BOOT_ID);

    @Override
    public Instant wall() {
        return Instant.now();
    }

    @Override
    public long monotonicNanos() {
        return System.nanoTime();
    }

    @Override
    public OptionalLong uptimeMillis() {
        return uptimeMillis(read(UPTIME));
    }

    @Override
    public String bootId() {
        return bootId;
    }

    /** Reads the first number of {@code /proc/uptime}: seconds with two decimals. */
    static OptionalLong uptimeMillis(String text) {
        int end = text.indexOf(' ');
        if (end <= 0) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(
                new BigDecimal(text.substring(0, end)).movePointRight(3).longValue());
    }

    private static String read(Path file) {
        try {
            return Files.readString(file).strip();
        } catch (IOException noSuchFileHere) {
            return "";
        }
    }
}
