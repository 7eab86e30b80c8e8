package rinsebell.floor.salon;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How long things take here.
 *
 * @param said what the salon said of its services
 * @param learned what was measured, oldest first, by what it is of; the unit is that of the {@link Stretch}
 */
public record Times(Map<Service, Duration> said, Map<Stretch, List<Integer>> learned) {
    public static final Times NONE = new Times(Map.of(), Map.of());

    /** How many have to be known before they count for more than a house number. */
    public static final int ENOUGH = 20;

    /** More are not kept: a salon gets quicker, and people change. */
    private static final int KEPT = 100;

    public Times {
        said = Map.copyOf(said);
        learned = Map.copyOf(learned);
    }

    /** How long a service takes while nothing is learned. */
    public Duration of(Service service) {
        return said.getOrDefault(service, service.usual());
    }

    /** What was measured; nothing where it is not {@link #ENOUGH}. */
    public List<Integer> known(Stretch stretch) {
        var all = learned.getOrDefault(stretch, List.of());
        return all.size() < ENOUGH ? List.of() : all;
    }

    Times saying(Map<Service, Duration> next) {
        return new Times(next, learned);
    }

    Times learning(Map<Stretch, List<Integer>> more) {
        var next = new EnumMap<Stretch, List<Integer>>(Stretch.class);
        next.putAll(learned);
        more.forEach((stretch, measured) -> next.merge(stretch, measured, Times::newest));
        next.replaceAll((stretch, all) -> newest(all, List.of()));
        return new Times(said, next);
    }

    private static List<Integer> newest(List<Integer> before, List<Integer> more) {
        var all = new ArrayList<>(before);
        all.addAll(more);
        return List.copyOf(all.subList(Math.max(0, all.size() - KEPT), all.size()));
    }
}
