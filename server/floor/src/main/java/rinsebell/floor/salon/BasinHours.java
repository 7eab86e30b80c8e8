package rinsebell.floor.salon;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Who is at the basins when.
 *
 * @param byStaff in the order of the week
 * @param since when that was last said; {@link Instant#MIN} where nobody said anything
 */
public record BasinHours(Map<StaffId, List<Shift>> byStaff, Instant since) {
    public static final BasinHours UNSAID = new BasinHours(Map.of(), Instant.MIN);

    public List<Shift> of(StaffId staff) {
        return byStaff.getOrDefault(staff, List.of());
    }

    /** Whether anybody said when anybody is there. */
    public boolean isSaid() {
        return !byStaff.isEmpty();
    }

    BasinHours with(StaffId staff, List<Shift> shifts, Instant at) {
        var next = new LinkedHashMap<>(byStaff);
        next.put(staff, shifts.stream().sorted().toList());
        return new BasinHours(Collections.unmodifiableMap(next), at);
    }
}
