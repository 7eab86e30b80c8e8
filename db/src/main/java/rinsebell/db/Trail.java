package rinsebell.db;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.StaffId;

/**
 * Who looked at what is private, and who did what beside the floor. What is done on the floor is facts, and stands in the
 * journal; this stands in a table of its own, chained row by row. Any thread may call.
 */
public final class Trail {

    /** A little more than a year, so that whoever asks about a year ago is still told. */
    public static final Duration KEPT = Duration.ofDays(400);

    private final Tables tables;

    Trail(Tables tables) {
        this.tables = tables;
    }

    /**
     * One request that is kept.
     *
     * @param at when it was answered
     * @param device which device asked, as beside a press: {@code own}, {@code device-4}; empty for a stranger
     * @param person whose PIN had opened it, or who was named; null for nobody
     * @param matter what it was about, as a code
     * @param route method and pattern of the address, such as {@code GET /clients/{id}}
     * @param subject the number in the address; null for none
     * @param status as it was answered (RFC 9110)
     */
    public record Step(
            Instant at,
            String device,
            @Nullable StaffId person,
            String matter,
            String route,
            @Nullable Long subject,
            int status) {

        /** Whether something was looked at or for; what is looked for is sent and not written into an address. */
        public boolean isLook() {
            return route.startsWith("GET ") || route.endsWith("/find");
        }

        public Optional<StaffId> who() {
            return Optional.ofNullable(person);
        }

        public Optional<Long> about() {
            return Optional.ofNullable(subject);
        }
    }

    /**
     * Keeps these, in their order; they are on disk when this returns.
     *
     * @throws DatabaseAway if the database can't be used just now; then none of them is kept
     */
    public synchronized void keep(List<Step> steps) {
        tables.database().inTransaction(handle -> {
            TrailTable.write(handle, steps);
            return steps;
        });
        tables.force();
    }

    /**
     * What was kept in a stretch of time, in the order in which it was.
     *
     * @param until not counted in
     * @throws DatabaseAway if that can't be told just now
     */
    public List<Step> between(Instant from, Instant until) {
        return tables.database().with(handle -> TrailTable.between(handle, from, until));
    }
}
