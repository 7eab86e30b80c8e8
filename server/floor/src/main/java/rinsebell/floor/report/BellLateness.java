package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rinsebell.floor.unit.Instants;

/**
 * How late a device sounded a turn of a bell: against the latest of when it was due, when the fact that made it due then was
 * recorded, and when the device started or woke.
 *
 * @param sounded what the device says
 * @param could when it could have sounded
 */
public record BellLateness(Sounded sounded, Instant could) {

    /**
     * Of turns that really rang; whatever else devices say is left out.
     *
     * @param turns each with the first instant at which anybody could know of it
     */
    static List<BellLateness> of(Collection<Sounded> sounded, Map<Turned, Instant> turns) {
        return sounded.stream()
                .flatMap(one -> Stream.ofNullable(turns.get(one.turn()))
                        .map(known -> new BellLateness(one, Instants.later(known, one.awake()))))
                .toList();
    }

    /** Not below zero: a device whose time is a little ahead is not early for it. */
    public Duration late() {
        var late = Duration.between(could, sounded.at());
        return late.isNegative() ? Duration.ZERO : late;
    }
}
