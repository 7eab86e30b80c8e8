package rinsebell.db;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import rinsebell.floor.report.Sounded;

/** What devices sounded, for reports alone. */
public final class Soundings {

    /** A little more than a year, so that a day can be held against the same day a year ago. */
    public static final Duration KEPT = Duration.ofDays(400);

    private final Database database;

    Soundings(Database database) {
        this.database = database;
    }

    /**
     * Writes these down; what is there already stays as it is. What sounded more than {@link #KEPT} before them is
     * forgotten.
     *
     * @return how many were new
     * @throws DatabaseAway if the database can't be used just now; then none of them was written
     */
    public int add(Collection<Sounded> all) {
        return database.inTransaction(handle -> {
            int added = SoundedTable.write(handle, all);
            all.stream()
                    .map(Sounded::at)
                    .max(Instant::compareTo)
                    .ifPresent(newest -> SoundedTable.forget(handle, newest.minus(KEPT)));
            return added;
        });
    }

    /**
     * What sounded in a stretch of time, in its order.
     *
     * @param until not counted in
     * @throws DatabaseAway if that can't be told just now
     */
    public List<Sounded> between(Instant from, Instant until) {
        return database.with(handle -> SoundedTable.between(handle, from, until));
    }
}
