package rinsebell.floor.bell;

import java.time.Instant;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Every instant at which one of some bells does something else, so that the next is found without asking them all. */
public final class Turns {
    private final List<Bell> bells;
    private final NavigableSet<Instant> instants;

    public Turns(List<Bell> bells) {
        this.bells = bells;
        this.instants = bells.stream()
                .flatMap(bell -> bell.rings().stream())
                .map(Ring::from)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The bells that these are of. */
    public List<Bell> bells() {
        return bells;
    }

    /** The first after an instant; empty when none follows. */
    public Optional<Instant> after(Instant now) {
        return Optional.ofNullable(instants.higher(now));
    }
}
