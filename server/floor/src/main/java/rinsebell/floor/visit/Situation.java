package rinsebell.floor.visit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.salon.Place;

/**
 * Where an event on a head would fall: what it is judged against.
 *
 * @param floor as it stands
 * @param visit whose head
 * @param at when the event happened, or would
 */
public record Situation(Floor floor, Visit visit, Instant at) {
    Restrictions restrictions() {
        return new Restrictions(floor, visit);
    }

    /** Whether this application was on the hair at that instant. */
    List<Reason> unlessOn(ApplicationId which) {
        return Reason.unless(visit.application(which).filter(this::wasOn).isPresent(), ReasonCode.NOT_ON);
    }

    private boolean wasOn(Application application) {
        var ending = application.ending();
        return ending == null || !ending.isOff() || !at.isAfter(ending.at());
    }

    Instant firstOn(ApplicationId which) {
        return visit.application(which).map(Application::firstOn).orElse(visit.begin());
    }

    /** What is wrong with going to a place now. */
    public List<Reason> unlessFree(Place place) {
        if (!floor.salon().rooms().has(place)) {
            return List.of(Reason.of(ReasonCode.NO_SUCH_PLACE, place));
        }
        if (place instanceof Place.Basin basin && floor.day().closedBasins().containsKey(basin.number())) {
            return List.of(Reason.of(ReasonCode.BASIN_CLOSED, place));
        }
        return inTheWay(place)
                .map(other -> List.of(Reason.of(ReasonCode.PLACE_TAKEN, place)))
                .orElse(List.of());
    }

    private Optional<Visit> inTheWay(Place place) {
        return place instanceof Place.Bench
                ? Optional.empty()
                : floor.at(place).stream()
                        .filter(other -> !other.id().equals(visit.id()))
                        .findFirst();
    }
}
