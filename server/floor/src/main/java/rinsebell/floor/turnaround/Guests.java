package rinsebell.floor.turnaround;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Basin;
import rinsebell.floor.basin.Outlook;
import rinsebell.floor.basin.Toners;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.visit.Visit;

/** What is still to be done for everybody on a floor. */
final class Guests {
    private final Floor floor;
    private final Outlook outlook;

    Guests(Floor floor, Outlook outlook) {
        this.floor = floor;
        this.outlook = outlook;
    }

    /** Everybody with whom something was begun, or who has a chair. */
    List<Guest> begun() {
        return floor.openVisits().stream()
                .filter(visit -> !isWaiting(visit))
                .map(this::guest)
                .toList();
    }

    /** Who waits on the bench and nothing was begun with: the longest first. */
    List<Visit> waiting() {
        return floor.openVisits().stream().filter(Guests::isWaiting).toList();
    }

    private static boolean isWaiting(Visit visit) {
        return visit.place() instanceof Place.Bench
                && visit.applications().isEmpty()
                && visit.services().done().isEmpty();
    }

    Guest guest(Visit visit) {
        var job = outlook.station().jobs().stream()
                .filter(one -> one.visit().equals(visit.id()))
                .reduce((first, second) -> second);
        return new Guest(
                visit.id().value(),
                chair(visit),
                basinUntil(visit),
                job.map(one -> new Hair(floor, visit, one)),
                Toners.isToCome(floor, visit),
                visit.services().now().map(one -> new Guest.Going(one.service(), one.from())),
                toCome(visit));
    }

    private static @Nullable Integer chair(Visit visit) {
        var chair = visit.stay().chair();
        return chair == null || visit.place() instanceof Place.Bench ? null : (Integer) chair.number();
    }

    private @Nullable Instant basinUntil(Visit visit) {
        return visit.place() instanceof Place.Basin there
                ? outlook.station().basins().stream()
                        .filter(basin -> basin.number() == there.number())
                        .map(Basin::freeFrom)
                        .findFirst()
                        .orElse(outlook.station().from())
                : null;
    }

    /** A bowl that was listed is one that nobody has put on yet. */
    private static List<Service> toCome(Visit visit) {
        var all = new ArrayList<>(visit.services().toCome());
        if (!visit.applications().isEmpty()) {
            all.remove(Service.BOWL);
        }
        all.remove(Service.TONER);
        return all;
    }
}
