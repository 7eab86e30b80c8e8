package rinsebell.demo.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.ClockMark;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalReader;
import rinsebell.floor.Ledger;

/** The back room: a machine, its disk, what lies on it, and the process that runs there now, if one does. */
final class Server {
    final Machine machine;
    final Platter disk;
    final Map<String, Ledger.Entry> database = new LinkedHashMap<>();

    private final Day day;
    private final Path folder;
    private final AliveMarker marker;
    private @Nullable ClockMark mark;
    private @Nullable Life life;
    private Crash.@Nullable Point dies;
    private long suspendedUntil;
    private int starts;

    Server(Day day, Path folder) {
        this.day = day;
        this.folder = folder;
        this.machine = new Machine(day.agenda, day.parts);
        this.disk = new Platter(day.parts, day.dice.others());
        this.marker = new AliveMarker(folder);
        prepare();
    }

    private void prepare() {
        try {
            Files.createDirectories(folder);
            try (var journal = Journal.open(journal(), JournalReader.NONE, disk)) {
                journal.append(Opening.morning(day.dice.others(), Instant.ofEpochMilli(day.agenda.now())));
            }
            disk.layDown(false);
        } catch (IOException | Ledger.NotSaved e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }

    Path journal() {
        return folder.resolve("journal");
    }

    /** The process that answers; null while none does. */
    @Nullable
    Life life() {
        return suspendedUntil > day.agenda.now() ? null : life;
    }

    boolean isUp() {
        return life != null;
    }

    boolean isSuspended() {
        return suspendedUntil > day.agenda.now();
    }

    void start() {
        if (life != null) {
            return;
        }
        starts++;
        try {
            life = new Life(day, this, starts);
        } catch (Crash | UncheckedIOException whileStarting) {
            day.fault("start that fails");
            isLeft(false);
            day.agenda.in(day.dice.between(1_000, 20_000), this::start);
            return;
        }
        life.begin();
    }

    /** In the middle of a press the process, or the power, will go. */
    void diesAt(Crash.Point point) {
        dies = point;
        disk.diesAt(point);
    }

    /** Nothing fails any more that was prepared. */
    void diesNot() {
        dies = null;
        disk.diesAt(null);
        disk.refuses(false);
    }

    void passes(Crash.Point point) {
        if (dies == point) {
            throw new Crash(point);
        }
    }

    /**
     * The process is gone, or the power of the whole machine.
     *
     * @param downMillis until it starts again
     */
    void goesDown(boolean powerGone, long downMillis) {
        if (life == null) {
            return;
        }
        life.ends(powerGone);
        life = null;
        isLeft(powerGone);
        if (powerGone) {
            day.agenda.in(downMillis, machine::startAnew);
        }
        day.agenda.in(downMillis + day.dice.between(1_000, 4_000), this::start);
    }

    private void isLeft(boolean powerGone) {
        dies = null;
        if (disk.layDown(powerGone)) {
            day.fault("torn write");
        }
        disk.refuses(false);
    }

    void suspends(long millis) {
        if (life == null || isSuspended()) {
            return;
        }
        suspendedUntil = day.agenda.now() + millis;
        day.agenda.at(suspendedUntil, () -> machine.woke(millis));
    }

    /** Does it as soon as the machine is awake. */
    void whenAwake(Runnable what) {
        if (isSuspended()) {
            day.agenda.at(suspendedUntil, what);
        } else {
            what.run();
        }
    }

    /** Keeps where the clock stands; it reaches the disk when it is asked for, since that is when somebody reads it. */
    void mark(ClockMark now) {
        mark = now;
    }

    /** The file as the last process left it. */
    AliveMarker marker() {
        if (mark != null) {
            marker.write(mark);
        }
        return marker;
    }

    @Nullable
    ClockMark lastMark() {
        return mark;
    }
}
