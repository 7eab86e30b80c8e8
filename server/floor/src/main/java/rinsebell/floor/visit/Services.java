package rinsebell.floor.visit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.salon.Service;

/**
 * What a client came for, and what they were told.
 *
 * @param listed in this order; none where nobody said
 * @param done those that are no bowl and were begun, in the order in which they were
 * @param told by when they were told to be done; empty where nobody told them
 */
public record Services(List<Service> listed, List<Done> done, Optional<Instant> told) {
    public static final Services NONE = new Services(List.of(), List.of(), Optional.empty());

    /**
     * One that was begun.
     *
     * @param service which
     * @param from when
     * @param until when it was over; empty while it goes on
     */
    public record Done(Service service, Instant from, Optional<Instant> until) {
        boolean isGoingOn() {
            return until.isEmpty();
        }
    }

    public Services {
        listed = List.copyOf(listed);
        done = List.copyOf(done);
    }

    /** The one that is going on. */
    public Optional<Done> now() {
        return done.stream().filter(Done::isGoingOn).reduce((first, second) -> second);
    }

    /** What was listed and neither begun nor over, bowls and toners apart: those the hair tells of. */
    public List<Service> toCome() {
        var begun = new ArrayList<>(done.stream().map(Done::service).toList());
        return listed.stream().filter(service -> !begun.remove(service)).toList();
    }

    Services listing(List<Service> next) {
        return new Services(next, done, told);
    }

    /** Whatever was going on is over by then. */
    Services begun(Service service, Instant at) {
        var over = done.stream().map(one -> one.isGoingOn() ? over(one, at) : one);
        return new Services(
                listed,
                Stream.concat(over, Stream.of(new Done(service, at, Optional.empty())))
                        .toList(),
                told);
    }

    /** One that nobody saw begin is only over. */
    Services ended(Service service, Instant at) {
        var isOn = now().filter(one -> one.service() == service).isPresent();
        var next = isOn
                ? done.stream().map(one -> one.isGoingOn() ? over(one, at) : one)
                : Stream.concat(done.stream(), Stream.of(new Done(service, at, Optional.of(at))));
        return new Services(listed, next.toList(), told);
    }

    Services told(Instant end) {
        return new Services(listed, done, Optional.of(end));
    }

    private static Done over(Done one, Instant at) {
        return new Done(one.service(), one.from(), Optional.of(at));
    }
}
