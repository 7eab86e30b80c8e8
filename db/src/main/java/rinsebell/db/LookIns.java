package rinsebell.db;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Links by which a phone or a calendar may read when chairs come free. They are no facts: a link that is taken back is
 * gone, and no copy of the tables brings it back. Any thread may call, and is told {@link DatabaseAway} while they can't
 * be reached.
 */
public final class LookIns {

    /** An open page asks every few seconds; nobody needs to know it to the second. */
    static final Duration NOTED_EVERY = Duration.ofMinutes(1);

    private final Tables tables;

    LookIns(Tables tables) {
        this.tables = tables;
    }

    /**
     * A link that may look in.
     *
     * @param made when
     * @param opened when it was opened last, to the minute; null for never
     */
    public record Link(
            long id, String name, Instant made, @Nullable Instant opened) {}

    /**
     * A link that is to be made.
     *
     * @param keyHash the SHA-256 of its key, in hex
     * @param press the id of the press that asks for it
     */
    public record Fresh(String name, String keyHash, String press, Instant made) {}

    /** What came of it. */
    public enum Added {
        MADE,
        /** The same press made one before, whose key is not known any more. */
        MADE_BEFORE,
        TOO_MANY
    }

    /**
     * Makes a link; it is on disk when this returns.
     *
     * @param most how many there may be at once
     */
    public synchronized Added add(Fresh fresh, int most) {
        Added added = tables.database().inTransaction(handle -> {
            if (LookInTable.isMadeBy(handle, fresh.press())) {
                return Added.MADE_BEFORE;
            }
            if (LookInTable.count(handle) >= most) {
                return Added.TOO_MANY;
            }
            LookInTable.add(handle, fresh);
            return Added.MADE;
        });
        tables.force();
        return added;
    }

    /** All of them, the newest first. */
    public List<Link> all() {
        return tables.database().with(LookInTable::all);
    }

    /**
     * Whether there is a link with this key, which is noted as opened. Rows are found by the hash, so how long that takes
     * tells at most of a hash, and from that nobody finds a key.
     *
     * @param keyHash the SHA-256 of the key, in hex
     */
    public boolean open(String keyHash, Instant now) {
        return tables.database().inTransaction(handle -> {
            boolean isOpen = LookInTable.isOpen(handle, keyHash);
            if (isOpen) {
                LookInTable.noteOpened(handle, keyHash, now, now.minus(NOTED_EVERY));
            }
            return isOpen;
        });
    }

    /** Takes one back for good; that is on disk when this returns. One that is gone already stays so. */
    public void takeBack(long id) {
        tables.database().inTransaction(handle -> LookInTable.delete(handle, id));
        tables.force();
    }
}
