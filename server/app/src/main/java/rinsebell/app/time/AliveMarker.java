package rinsebell.app.time;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A small file that a running server writes every few seconds, so that the next one knows since when none ran. It is
 * replaced whole, never forced to disk: after a power cut an older one is as good, it only makes the gap look longer.
 */
public final class AliveMarker {

    private static final Logger LOG = LoggerFactory.getLogger(AliveMarker.class);

    private final Path file;
    private final Path next;

    public AliveMarker(Path folder) {
        this.file = folder.resolve("alive");
        this.next = folder.resolve("alive.next");
    }

    /** The last mark; empty on the very first start, and when the file cannot be read as one. */
    public Optional<ClockMark> last() {
        try {
            return Files.exists(file) ? Optional.of(parse(Files.readAllLines(file))) : Optional.empty();
        } catch (IOException | DateTimeException | IllegalArgumentException e) {
            LOG.warn("{} can't be read as a mark of the clock and is passed over: {}", file, e.toString());
            return Optional.empty();
        }
    }

    /** Writes a newer mark. A full disk must not stop the bells, so a failure is only logged. */
    public void write(ClockMark mark) {
        try {
            Files.writeString(next, mark.bootId() + "\n" + mark.uptimeMillis() + "\n" + mark.salon() + "\n");
            Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            LOG.warn("{} can't be written: {}", file, e.toString());
        }
    }

    private static ClockMark parse(List<String> lines) {
        if (lines.size() != 3) {
            throw new IllegalArgumentException("a mark has three lines, not " + lines.size());
        }
        return new ClockMark(lines.get(0), Long.parseLong(lines.get(1)), Instant.parse(lines.get(2)));
    }
}
