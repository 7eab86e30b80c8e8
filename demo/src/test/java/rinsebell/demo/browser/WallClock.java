package rinsebell.demo.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.Map;

/**
 * The wall clock of a process, which a test sets while the process runs, by libfaketime. Its monotonic clock and the
 * uptime of the machine stay true, as they do when a person sets the clock of a computer.
 */
final class WallClock {
    /** The dynamic linker puts in where this machine keeps its libraries. */
    private static final String LIBRARY = "/usr/$LIB/faketime/libfaketime.so.1";

    private final Path file;

    /** A clock that is right. */
    WallClock(Path folder) throws IOException {
        this.file = folder.resolve("wall-clock");
        isAhead(Duration.ZERO);
    }

    /** What a process must be started with. */
    Map<String, String> environment() {
        return Map.of(
                "LD_PRELOAD",
                LIBRARY,
                "FAKETIME_TIMESTAMP_FILE",
                file.toString(),
                "FAKETIME_NO_CACHE",
                "1",
                "FAKETIME_DONT_FAKE_MONOTONIC",
                "1",
                // Otherwise it takes a JVM's waits for waits on the wall clock, and they end at once.
                "FAKETIME_FORCE_MONOTONIC_FIX",
                "0");
    }

    /** Sets it, so far ahead of what is right; negative is behind. */
    void isAhead(Duration by) throws IOException {
        var next = Files.writeString(
                file.resolveSibling("wall-clock.next"), (by.isNegative() ? "" : "+") + by.toSeconds() + "\n");
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
