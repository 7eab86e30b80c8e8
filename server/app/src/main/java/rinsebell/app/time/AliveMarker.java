package rinsebell.app.time;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A small file that a running server writes every few seconds, so that the next one knows since when none ran. It is
 * replaced whole and, but for one of a clock that was put right, not forced to disk: after a power cut an older one is as
 * good, it only makes the gap look longer.
 */
public final class AliveMarker {

    private static final Logger LOG = LoggerFactory.getLogger(AliveMarker.class);

    private static final String BEHIND = "behind";
    private static final String CONFIRMED = "confirmed ";
    private static final int LINES = 3;

    private final Path file;
    private final Path next;
    private final Path aside;

    public AliveMarker(Path folder) {
        this.file = folder.resolve("alive");
        this.next = folder.resolve("alive.next");
        this.aside = folder.resolve("alive.set-aside");
    }

    /**
     * The last mark. When there is none, or it can't be read or can't be true, what {@code proof} tells instead; empty
     * on the very first start.
     */
    public Optional<ClockMark> last(ClockProof proof) {
        try {
            return Files.exists(file) ? proof.over(parse(Files.readAllLines(file), proof)) : proof.alone();
        } catch (IOException | DateTimeException | IllegalArgumentException e) {
            setAside(e);
            return proof.alone();
        }
    }

    private void setAside(Exception why) {
        LOG.warn(
                "{} is no mark of the clock that can be true, and is set aside as {}: {}", file, aside, why.toString());
        try {
            Files.move(file, aside, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            LOG.warn("{} can't be set aside: {}", file, e.toString());
        }
    }

    /** Writes a newer mark. A full disk must not stop the bells, so a failure is only logged. */
    public void write(ClockMark mark) {
        write(mark, false);
    }

    /** Writes the mark of a clock that was put right just now, so that one from before never comes back. */
    public void writeForCertain(ClockMark mark) {
        write(mark, true);
    }

    private synchronized void write(ClockMark mark, boolean forced) {
        try {
            Files.writeString(
                    next,
                    mark.bootId() + "\n" + mark.uptimeMillis() + "\n" + mark.salon() + "\n" + CONFIRMED
                            + mark.confirmed() + "\n" + (mark.behind() ? BEHIND + "\n" : ""));
            if (forced) {
                force(next);
            }
            Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            LOG.warn("{} can't be written: {}", file, e.toString());
        }
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Earlier versions did not write which facts their clock had followed; they are taken to be all. */
    private static ClockMark parse(List<String> lines, ClockProof proof) {
        if (lines.size() < LINES) {
            throw new IllegalArgumentException("a mark has three lines at least");
        }
        boolean behind = false;
        long confirmed = proof.confirmed();
        for (String line : lines.subList(LINES, lines.size())) {
            if (line.startsWith(CONFIRMED)) {
                confirmed = Long.parseLong(line.substring(CONFIRMED.length()));
            } else if (line.equals(BEHIND)) {
                behind = true;
            } else {
                throw new IllegalArgumentException("a mark does not say " + line);
            }
        }
        return new ClockMark(
                lines.get(0), Long.parseLong(lines.get(1)), Instant.parse(lines.get(2)), behind, confirmed);
    }
}
