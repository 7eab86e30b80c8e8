package rinsebell.floor.turnaround;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.salon.Service;

/**
 * What somebody would like who has not come yet.
 *
 * @param services in this order
 * @param chair in which; empty for whichever is free first
 * @param least for how long at least; nothing for as long as the services take
 */
public record Wish(List<Service> services, Optional<Integer> chair, Duration least) {
    public Wish {
        services = List.copyOf(services);
    }

    public static Wish of(List<Service> services) {
        return new Wish(services, Optional.empty(), Duration.ZERO);
    }
}
