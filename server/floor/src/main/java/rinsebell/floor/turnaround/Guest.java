package rinsebell.floor.turnaround;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.Service;

/**
 * Somebody with what is still to be done for them.
 *
 * @param number whom the numbers are drawn for
 * @param chair which they hold; null for none yet
 * @param basinUntil until when they are at a basin where they are now; null for not there
 * @param hair what is on and has to come to a basin; empty for nothing
 * @param toner whether a toner follows the rinse at the basin
 * @param going what is going on since when; empty for nothing
 * @param toCome in this order; a toner is not among them where it follows a rinse
 */
record Guest(
        long number,
        @Nullable Integer chair,
        @Nullable Instant basinUntil,
        Optional<Hair> hair,
        boolean toner,
        Optional<Going> going,
        List<Service> toCome) {
    record Going(Service service, Instant since) {}

    Guest {
        toCome = List.copyOf(toCome);
    }

    /** Somebody who might come. */
    static Guest wanting(List<Service> services) {
        return new Guest(0, null, null, Optional.empty(), false, Optional.empty(), services);
    }

    /** Whether they still have to come to a basin. */
    boolean needsBasin() {
        return hair.isPresent() || toCome.contains(Service.BOWL);
    }
}
