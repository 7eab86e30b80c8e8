package rinsebell.floor.bowl;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.VisitId;

/**
 * What the salon's day holds besides the visits.
 *
 * @param bowlsById every bowl, by number
 * @param onBreak who is on a break
 * @param closedBasins basins out of order, and since when
 * @param gaps outages that nobody has caught up on yet
 * @param pins what people decided about heads' next turns at a basin
 * @param announced the turns that people were told last, by the number of the fact that put the first of them on
 */
public record Day(
        Map<Long, Bowl> bowlsById,
        Set<StaffId> onBreak,
        Map<Integer, Instant> closedBasins,
        List<Gap> gaps,
        Map<VisitId, Pin> pins,
        Map<Long, Announced> announced) {
    public static final Day EMPTY = new Day(Map.of(), Set.of(), Map.of(), List.of(), Map.of(), Map.of());

    /**
     * A time in which no server ran.
     *
     * @param seq the number of the fact that says so
     */
    public record Gap(long seq, Instant from, Instant until) {}

    public Optional<Bowl> bowl(BowlId id) {
        return Optional.ofNullable(bowlsById.get(id.value()));
    }

    public Collection<Bowl> bowls() {
        return bowlsById.values();
    }

    Day with(Bowl bowl) {
        var next = new TreeMap<>(bowlsById);
        next.put(bowl.id().value(), bowl);
        return new Day(Collections.unmodifiableMap(next), onBreak, closedBasins, gaps, pins, announced);
    }

    Day filled(BowlId root, List<Portion> portions) {
        var next = new TreeMap<>(bowlsById);
        next.replaceAll((id, bowl) -> bowl.root().equals(root) ? bowl.filled(portions) : bowl);
        return new Day(Collections.unmodifiableMap(next), onBreak, closedBasins, gaps, pins, announced);
    }

    Day onBreak(StaffId staff, boolean away) {
        return new Day(bowlsById, changed(onBreak, staff, away), closedBasins, gaps, pins, announced);
    }

    Day basinClosed(int basin, Instant at) {
        var next = new TreeMap<>(closedBasins);
        next.putIfAbsent(basin, at);
        return new Day(bowlsById, onBreak, Collections.unmodifiableMap(next), gaps, pins, announced);
    }

    Day basinOpened(int basin) {
        var next = new TreeMap<>(closedBasins);
        next.remove(basin);
        return new Day(bowlsById, onBreak, Collections.unmodifiableMap(next), gaps, pins, announced);
    }

    Day with(Gap gap) {
        var next = new ArrayList<>(gaps);
        next.add(gap);
        return new Day(bowlsById, onBreak, closedBasins, List.copyOf(next), pins, announced);
    }

    Day caughtUp() {
        return new Day(bowlsById, onBreak, closedBasins, List.of(), pins, announced);
    }

    Day pinned(VisitId visit, @Nullable Pin pin) {
        var next = new HashMap<>(pins);
        if (pin == null) {
            next.remove(visit);
        } else {
            next.put(visit, pin);
        }
        return new Day(bowlsById, onBreak, closedBasins, gaps, Map.copyOf(next), announced);
    }

    Day announced(Map<Long, Announced> turns) {
        return new Day(bowlsById, onBreak, closedBasins, gaps, pins, Map.copyOf(turns));
    }

    private static <T> Set<T> changed(Set<T> set, T element, boolean in) {
        var next = new HashSet<>(set);
        if (in) {
            next.add(element);
        } else {
            next.remove(element);
        }
        return Set.copyOf(next);
    }
}
