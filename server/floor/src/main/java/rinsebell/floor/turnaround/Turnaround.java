package rinsebell.floor.turnaround;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Basin;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Stretch;
import rinsebell.floor.visit.VisitId;

/**
 * When each chair comes free, and when whoever waits is done: a few hundred runs of the rest of the day, each with lengths
 * drawn from what the salon has measured or from house numbers. Heads go to the basins as they are done, each to the basin
 * that is free first for as long as it takes. The same floor at the same minute gives the same.
 */
public final class Turnaround {
    /** Between two looks at the same floor nothing jumps, and a board is told within some milliseconds. */
    private static final int RUNS = 400;

    private final Instant now;
    private final Map<VisitId, Spread> ends;
    private final Map<Integer, Range> chairs;
    private final List<Waits> waits;

    /**
     * Somebody who waits for a chair.
     *
     * @param visit who; empty for somebody who might come
     * @param begins when their chair is free
     * @param done when they are
     * @param chair the one that most likely comes free for them; 0 where the salon's chairs are never free
     */
    public record Waits(Optional<VisitId> visit, Range begins, Range done, int chair) {}

    private Turnaround(Instant now, Map<VisitId, Spread> ends, Map<Integer, Range> chairs, List<Waits> waits) {
        this.now = now;
        this.ends = ends;
        this.chairs = chairs;
        this.waits = waits;
    }

    /** Of everybody who is here. */
    public static Turnaround of(Floor floor, Instant now) {
        return of(floor, now, List.of());
    }

    private static Instant minute(Instant at) {
        return at.truncatedTo(ChronoUnit.MINUTES);
    }

    /** Of everybody who is here, and of somebody who would come behind them all and wants these services. */
    public static Turnaround of(Floor floor, Instant now, List<Service> wanted) {
        return new Runs(floor, minute(now), wanted).all();
    }

    /** Whether it is seen from the minute of an instant. */
    public boolean isOf(Instant other) {
        return now.equals(minute(other));
    }

    /** When a client leaves; empty for whoever waits. */
    public Optional<Range> end(VisitId visit) {
        return Optional.ofNullable(ends.get(visit)).map(Spread::range);
    }

    /**
     * By when a client has left in one part of all cases; empty for whoever waits.
     *
     * @param part between 0 and 1
     */
    public Optional<Instant> end(VisitId visit, double part) {
        return Optional.ofNullable(ends.get(visit)).map(spread -> spread.at(part));
    }

    /** When each taken chair is free, by number. */
    public Map<Integer, Range> chairs() {
        return chairs;
    }

    /** Whoever waits for a chair, in their order; who might come is the last. */
    public List<Waits> waits() {
        return waits;
    }

    private static final class Runs {
        private final Floor floor;
        private final Instant now;
        private final List<Guest> begun;
        private final List<Guest> waiting;
        private final List<Optional<VisitId>> names;
        private final List<Basin> basins;
        private final Lengths lengths;
        private final double[][] endsOf;
        private final double[][] begins;
        private final double[][] done;
        private final int[][] seats;

        Runs(Floor floor, Instant now, List<Service> wanted) {
            this.floor = floor;
            this.now = now;
            var outlook = floor.outlook(now);
            var guests = new Guests(floor, outlook);
            this.begun = guests.begun();
            this.waiting = new ArrayList<>();
            this.names = new ArrayList<>();
            guests.waiting().forEach(visit -> {
                waiting.add(guests.guest(visit));
                names.add(Optional.of(visit.id()));
            });
            if (!wanted.isEmpty()) {
                waiting.add(new Guest(0, null, null, Optional.empty(), false, Optional.empty(), wanted));
                names.add(Optional.empty());
            }
            this.basins = outlook.station().basins();
            this.lengths = new Lengths(floor.salon());
            this.endsOf = new double[begun.size()][RUNS];
            this.begins = new double[waiting.size()][RUNS];
            this.done = new double[waiting.size()][RUNS];
            this.seats = new int[waiting.size()][RUNS];
        }

        Turnaround all() {
            for (var run = 0; run < RUNS; run++) {
                new Run(run).live();
            }
            var ends = new HashMap<VisitId, Spread>();
            var chairs = new TreeMap<Integer, Range>();
            for (var i = 0; i < begun.size(); i++) {
                var spread = new Spread(endsOf[i]);
                ends.put(new VisitId(begun.get(i).number()), spread);
                var chair = begun.get(i).chair();
                if (chair != null) {
                    chairs.merge(chair, spread.range(), Runs::later);
                }
            }
            return new Turnaround(now, ends, chairs, waits());
        }

        private static Range later(Range one, Range other) {
            return one.latest().isAfter(other.latest()) ? one : other;
        }

        private List<Waits> waits() {
            var all = new ArrayList<Waits>();
            for (var i = 0; i < waiting.size(); i++) {
                all.add(new Waits(
                        names.get(i), new Spread(begins[i]).range(), new Spread(done[i]).range(), mostOften(seats[i])));
            }
            return List.copyOf(all);
        }

        private static int mostOften(int[] chairs) {
            return Arrays.stream(chairs)
                    .boxed()
                    .max(Comparator.comparingLong((Integer chair) -> Arrays.stream(chairs)
                                    .filter(other -> other == chair)
                                    .count())
                            .thenComparing(Comparator.reverseOrder()))
                    .orElse(0);
        }

        /** One way in which the rest of the day may go. */
        private final class Run {
            private final int run;
            private final BasinTimes basinTimes;

            Run(int run) {
                this.run = run;
                this.basinTimes = new BasinTimes(basins.stream()
                        .mapToDouble(basin -> Math.max(seconds(now), seconds(basin.freeFrom())))
                        .toArray());
            }

            void live() {
                var order = new ArrayList<Integer>();
                var water = new double[begun.size()];
                for (var i = 0; i < begun.size(); i++) {
                    order.add(i);
                    water[i] = water(begun.get(i));
                }
                order.sort(Comparator.comparingDouble(i -> water[i]));
                for (var i : order) {
                    endsOf[i][run] = end(begun.get(i), water[i]);
                }
                seatWaiting();
            }

            /** When they come to a basin: with what is on, or with the bowl that is to come. */
            private double water(Guest guest) {
                return guest.hair()
                        .map(hair -> water(guest, hair))
                        .orElseGet(
                                () -> guest.toCome().contains(Service.BOWL) ? bowl(guest, seconds(now)) : seconds(now));
            }

            private double water(Guest guest, Guest.Hair hair) {
                var open = seconds(hair.firstOn())
                        + lengths.developing(draw(guest, Stretch.DEVELOPING))
                                * (seconds(hair.latest()) - seconds(hair.firstOn()));
                var at = hair.decided() == null
                        ? open
                        : Math.max(seconds(hair.decided()), Math.min(open, seconds(hair.latest())));
                return Math.max(seconds(now), Math.max(seconds(hair.earliest()), at));
            }

            private double end(Guest guest, double water) {
                var at = seconds(now);
                if (guest.basinUntil() != null) {
                    at = Math.max(at, seconds(guest.basinUntil()));
                } else if (guest.hair().isPresent()) {
                    var foils = guest.hair().get().foils();
                    at = basinTimes.end(water, rinsing(guest, foils, guest.toner()));
                } else if (guest.toCome().contains(Service.BOWL)) {
                    at = basinTimes.end(water, rinsing(guest, false, guest.toner()));
                }
                return services(guest, at);
            }

            private double rinsing(Guest guest, boolean foils, boolean toner) {
                var rinse = lengths.rinsing(foils, draw(guest, foils ? Stretch.RINSING_FOILS : Stretch.RINSING));
                return toner ? 2 * rinse + lengths.of(Stretch.TONER, draw(guest, Stretch.TONER)) : rinse;
            }

            private double services(Guest guest, double from) {
                var at = from;
                if (guest.going().isPresent()) {
                    at = Math.max(at, over(guest, guest.going().get()));
                }
                for (var service : guest.toCome()) {
                    at += service == Service.BOWL ? 0 : length(guest, service);
                }
                return at + lengths.of(Stretch.SETTLING, draw(guest, Stretch.SETTLING));
            }

            /** What has gone on for longer than it would have taken is nearly over. */
            private double over(Guest guest, Guest.Going going) {
                var stretch = Lengths.stretch(going.service());
                var since = seconds(going.since());
                return lengths.over(stretch, since, seconds(now), draw(guest, stretch));
            }

            private double length(Guest guest, Service service) {
                return lengths.of(Lengths.stretch(service), draw(guest, Lengths.stretch(service)));
            }

            /** When a bowl that goes on from then is rinsed: nobody knows which directions it will have. */
            private double bowl(Guest guest, double from) {
                var applying = lengths.of(Stretch.APPLYING, draw(guest, Stretch.APPLYING));
                var developing = lengths.developing(draw(guest, Stretch.DEVELOPING)) * Lengths.BOWL;
                return from + Math.max(applying, developing);
            }

            private double draw(Guest guest, Stretch stretch) {
                return Draw.of(guest.number(), stretch, run);
            }

            private void seatWaiting() {
                var free = chairsFree();
                for (var i = 0; i < waiting.size(); i++) {
                    var chair = free.entrySet().stream()
                            .min(Map.Entry.comparingByValue())
                            .orElse(Map.entry(0, seconds(now)));
                    begins[i][run] = chair.getValue();
                    done[i][run] = done(waiting.get(i), chair.getValue());
                    seats[i][run] = chair.getKey();
                    free.put(chair.getKey(), done[i][run]);
                }
            }

            private double done(Guest guest, double from) {
                var at = guest.toCome().contains(Service.BOWL)
                        ? basinTimes.end(bowl(guest, from), rinsing(guest, false, guest.toner()))
                        : from;
                return services(guest, at);
            }

            private Map<Integer, Double> chairsFree() {
                var free = new TreeMap<Integer, Double>();
                for (var chair = 1; chair <= floor.salon().rooms().chairs(); chair++) {
                    free.put(chair, seconds(now));
                }
                for (var i = 0; i < begun.size(); i++) {
                    var chair = begun.get(i).chair();
                    if (chair != null) {
                        free.merge(chair, endsOf[i][run], Math::max);
                    }
                }
                return free;
            }
        }

        private static double seconds(Instant at) {
            return at.equals(Instant.MIN) ? Double.NEGATIVE_INFINITY : at.toEpochMilli() / 1_000.0;
        }
    }
}
