package rinsebell.db.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.floor.Ledger.NotSaved;

/**
 * An append-only journal in a folder of its own, written by one thread. Who opens it makes sure that no other process
 * does.
 */
public final class Journal implements AutoCloseable {

    /** Files of this length are read whole in a moment and looked at with any editor. */
    private static final long FULL_AT_BYTES = 8L << 20;

    private static final Logger LOG = LoggerFactory.getLogger(Journal.class);

    private final Disk disk;
    private final Path folder;
    private final long fullAtBytes;
    private final Recovered recovered;
    private Path file;
    private Disk.OpenFile open;
    private long length;
    private JournalMark end;
    private @Nullable MustStop broken;

    private Journal(Path folder, Rules rules, Recovery.State state) throws IOException {
        this.disk = rules.disk();
        this.fullAtBytes = rules.fullAtBytes();
        this.folder = folder;
        this.recovered = state.recovered();
        this.file = state.last().file();
        this.open = disk.open(file);
        this.length = state.read().wholeBytes();
        this.end = state.read().end();
        settle();
    }

    record Rules(Disk disk, long fullAtBytes) {}

    /**
     * Opens the journal in a folder, which is created if need be: reads it from end to end, hands every whole press to
     * {@code reader}, cuts off the torn tail of a batch that was never answered, and forces the rest to disk. What is
     * cut off is kept in a file beside it.
     *
     * @throws JournalDamaged if anything but such a tail does not fit; nothing is changed then
     * @throws RuntimeException whatever {@code reader} throws; nothing is changed then either
     * @throws IOException if the disk can't be read or written
     */
    public static Journal open(Path folder, JournalReader reader) throws IOException {
        return open(folder, reader, new Rules(new RealDisk(), FULL_AT_BYTES));
    }

    /**
     * The same on another disk than this computer's, which a simulation can let fail. What is read at the opening is read
     * from the folder all the same.
     */
    public static Journal open(Path folder, JournalReader reader, Disk disk) throws IOException {
        return open(folder, reader, new Rules(disk, FULL_AT_BYTES));
    }

    static Journal open(Path folder, JournalReader reader, Rules rules) throws IOException {
        Files.createDirectories(folder);
        Recovery.State state = Recovery.read(folder, reader);
        reader.end(state.recovered());
        return new Journal(folder, rules, state);
    }

    /**
     * Reads a journal from end to end and changes nothing.
     *
     * @throws JournalDamaged if anything but a torn tail does not fit
     * @throws IOException if the folder can't be read
     */
    public static Recovered verify(Path folder) throws IOException {
        return read(folder, JournalReader.NONE);
    }

    /**
     * Reads a journal from end to end, hands every whole press to {@code reader}, and changes nothing.
     *
     * @throws JournalDamaged if anything but a torn tail does not fit
     * @throws RuntimeException whatever {@code reader} throws
     * @throws IOException if the folder can't be read
     */
    public static Recovered read(Path folder, JournalReader reader) throws IOException {
        return Recovery.read(folder, reader).recovered();
    }

    /**
     * Whether this place is one of a journal's, behind a whole press. Changes nothing.
     *
     * @throws JournalDamaged if anything but a torn tail does not fit
     * @throws IOException if the folder can't be read
     */
    public static boolean holds(Path folder, JournalMark place) throws IOException {
        AtomicBoolean met = new AtomicBoolean(place.equals(JournalMark.START));
        read(folder, (press, after) -> met.compareAndSet(false, after.equals(place)));
        return met.get();
    }

    /**
     * Writes presses behind the others and returns when they are on disk for certain: one force for all of them.
     *
     * @throws NotSaved if the disk did not take them; the journal is as it was before
     * @throws MustStop if they could not be taken back either; every later call throws it again
     */
    public void append(List<JournalPress> presses) throws NotSaved {
        if (broken != null) {
            throw broken;
        }
        Batch batch = Batch.of(presses, end);
        try {
            beginNextFileIfFull();
            write(batch.bytes());
        } catch (IOException | RuntimeException e) {
            takeBack(e);
            throw new NotSaved("the journal could not be written: " + e.getMessage(), e);
        }
        length += batch.bytes().length;
        end = batch.end();
    }

    /** The place behind the last press. */
    public JournalMark end() {
        return end;
    }

    /** What was found when the journal was opened. */
    public Recovered recovered() {
        return recovered;
    }

    @Override
    public void close() throws IOException {
        open.close();
    }

    /** What was read may still be in memory only, and it counts from now on. */
    private void settle() throws IOException {
        if (open.length() > length) {
            keepTail();
            open.cut(length);
        }
        open.force();
    }

    /** Nobody was told that it is saved, and yet it is not for a program to say that nobody will miss it. */
    private void keepTail() throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        Path kept = unused(file.resolveSibling(file.getFileName() + ".cut"));
        try (Disk.OpenFile aside = disk.open(kept)) {
            aside.write(Arrays.copyOfRange(bytes, Math.toIntExact(length), bytes.length), 0);
            aside.force();
        }
        LOG.warn(
                "the last {} bytes of {} are of a batch that was never answered ({}): they are cut off and kept in {}",
                recovered.tornBytes(),
                file,
                recovered.tornBecause(),
                kept);
    }

    private static Path unused(Path name) {
        int number = 1;
        while (Files.exists(name.resolveSibling(name.getFileName() + "-" + number))) {
            number++;
        }
        return name.resolveSibling(name.getFileName() + "-" + number);
    }

    private void write(byte[] bytes) throws IOException {
        open.write(bytes, length);
        open.force();
        if (!open.isInPlace()) {
            throw new IOException(file + " was deleted, moved or replaced while it was in use");
        }
    }

    private void beginNextFileIfFull() throws IOException {
        if (length >= fullAtBytes) {
            Path nextFile = Segment.startingAt(folder, end.lines() + 1).file();
            Disk.OpenFile next = disk.open(nextFile);
            open.close();
            open = next;
            file = nextFile;
            length = 0;
        }
    }

    /** A thread that is interrupted in the middle of a write finds its file closed, and would again while it is. */
    private void takeBack(Exception cause) {
        boolean interrupted = Thread.interrupted();
        try {
            cutBack();
        } catch (IOException | RuntimeException e) {
            e.addSuppressed(cause);
            broken = new MustStop(file, e);
            throw broken;
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void cutBack() throws IOException {
        if (!open.isOpen()) {
            open = disk.open(file);
        }
        open.cut(length);
        open.force();
    }
}
