package rinsebell.floor.bell;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.BellShelved;
import rinsebell.floor.salon.StaffId;

/**
 * That somebody has put a bell off.
 *
 * @param what which, for how long and why
 * @param at when
 * @param by who; null when nobody was named
 */
public record Shelved(
        BellShelved what, Instant at, @Nullable StaffId by) {
    public Instant until() {
        return at.plus(what.span());
    }
}
