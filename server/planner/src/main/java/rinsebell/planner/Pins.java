package rinsebell.planner;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rinsebell.floor.basin.Basin;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Station;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.visit.VisitId;

/** Those pins of a station that bind: not to a basin out of order, not in a circle, and none of a head that burns. */
final class Pins {
    private final Station station;
    private final List<Integer> open;

    Pins(Station station) {
        this.station = station;
        this.open = station.basins().stream().map(Basin::number).toList();
    }

    /** At which basin it has to be. */
    Optional<Integer> basin(Job job) {
        return station.pin(job).map(Pin::basin).filter(open::contains);
    }

    /** Where it may be. */
    int[] basins(Job job) {
        return basin(job)
                .map(number -> new int[] {number})
                .orElseGet(() -> open.stream().mapToInt(number -> number).toArray());
    }

    boolean anyBasin() {
        return station.jobs().stream().anyMatch(job -> basin(job).isPresent());
    }

    /** Whether water must not be on for the second before it is for the first. */
    boolean isBefore(Job first, Job second) {
        return !second.isAtOnce()
                && station.pin(first)
                        .filter(pin -> second.visit().equals(pin.before()))
                        .filter(pin -> !isCircle(first.visit()))
                        .isPresent();
    }

    private boolean isCircle(VisitId visit) {
        var seen = new HashSet<VisitId>();
        var at = visit;
        while (seen.add(at)) {
            var pin = station.pins().get(at);
            if (pin == null || pin.before() == null) {
                return false;
            }
            at = pin.before();
        }
        return true;
    }

    /** Every pair of which the first goes before the second, as places in a list. */
    List<int[]> pairs(List<Job> jobs) {
        var pairs = new ArrayList<int[]>();
        for (var first = 0; first < jobs.size(); first++) {
            if (station.pin(jobs.get(first)).filter(pin -> pin.before() != null).isPresent()) {
                var one = first;
                IntStream.range(0, jobs.size())
                        .filter(other -> other != one && isBefore(jobs.get(one), jobs.get(other)))
                        .forEach(other -> pairs.add(new int[] {one, other}));
            }
        }
        return pairs;
    }
}
