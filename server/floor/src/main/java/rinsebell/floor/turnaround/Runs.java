package rinsebell.floor.turnaround;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rinsebell.floor.Floor;
import rinsebell.floor.visit.VisitId;

/** Some hundred runs of the rest of the day on one floor, and what they have in common. */
final class Runs {
    /** Between two looks at the same floor nothing jumps, and a board is told within some milliseconds. */
    private static final int RUNS = 400;

    private final List<Guest> begun;
    private final List<Guest> waiting = new ArrayList<>();
    private final List<Optional<VisitId>> names = new ArrayList<>();
    private final Optional<Wish> wish;
    private final double[][] ends;
    private final Run.Seat[][] seats;

    Runs(Floor floor, Instant now, Optional<Wish> wish) {
        var outlook = floor.outlook(now);
        var guests = new Guests(floor, outlook);
        this.begun = guests.begun();
        guests.waiting().forEach(visit -> waits(guests.guest(visit), Optional.of(visit.id())));
        wish.ifPresent(one -> waits(Guest.wanting(one.services()), Optional.empty()));
        this.wish = wish;
        this.ends = new double[begun.size()][RUNS];
        this.seats = new Run.Seat[waiting.size()][RUNS];
        var from = Course.seconds(now);
        var lengths = new Lengths(floor.salon());
        var chairs = floor.salon().rooms().chairs();
        var freeFrom = outlook.station().basins().stream()
                .mapToDouble(basin -> Math.max(from, Course.seconds(basin.freeFrom())))
                .toArray();
        for (var run = 0; run < RUNS; run++) {
            live(run, new Run(run, from, chairs, lengths, freeFrom));
        }
    }

    private void waits(Guest guest, Optional<VisitId> name) {
        waiting.add(guest);
        names.add(name);
    }

    private void live(int number, Run run) {
        var left = run.ends(begun);
        for (var i = 0; i < left.length; i++) {
            ends[i][number] = left[i];
        }
        for (var i = 0; i < seats.length; i++) {
            seats[i][number] = seat(run, i);
        }
    }

    private Run.Seat seat(Run run, int i) {
        var guest = waiting.get(i);
        return wish.filter(one -> names.get(i).isEmpty())
                .map(one -> run.seat(guest, one))
                .orElseGet(() -> run.seat(guest));
    }

    /** When each client leaves with whom something was begun. */
    Map<VisitId, Spread> ends() {
        var all = new HashMap<VisitId, Spread>();
        for (var i = 0; i < begun.size(); i++) {
            all.put(new VisitId(begun.get(i).number()), new Spread(ends[i]));
        }
        return all;
    }

    /** When each taken chair is free. */
    Map<Integer, Range> chairs() {
        var all = new TreeMap<Integer, Range>();
        for (var i = 0; i < begun.size(); i++) {
            var chair = begun.get(i).chair();
            if (chair != null) {
                all.merge(chair, new Spread(ends[i]).range(), Runs::later);
            }
        }
        return all;
    }

    private static Range later(Range one, Range other) {
        return one.latest().isAfter(other.latest()) ? one : other;
    }

    List<Turnaround.Waits> waits() {
        var all = new ArrayList<Turnaround.Waits>();
        for (var i = 0; i < seats.length; i++) {
            var got = List.of(seats[i]);
            all.add(new Turnaround.Waits(
                    names.get(i),
                    new Spread(got.stream().mapToDouble(Run.Seat::begins).toArray()).range(),
                    new Spread(got.stream().mapToDouble(Run.Seat::done).toArray()).range(),
                    mostOften(got.stream().mapToInt(Run.Seat::number).toArray())));
        }
        return List.copyOf(all);
    }

    /** The smaller number, where two came equally often. */
    private static int mostOften(int[] chairs) {
        var counts = Arrays.stream(chairs).boxed().collect(Collectors.groupingBy(one -> one, Collectors.counting()));
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Long>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey)
                .orElse(0);
    }
}
