package rinsebell.floor.basin;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Predicate;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.visit.VisitId;

/**
 * The dispatch rule. Heads are taken one after another, in a few orders of which the best counts: by their rinse-by, by
 * when their stay would have to begin, as they become ready, and as they were announced. Each gets the earliest instant at
 * which a basin, and hands, are there for its whole stay; where somebody is late, whoever is goes further to the front as
 * long as that helps. Then all who may stay on longer do, as far as nobody behind them is pushed. No clock, no chance: the
 * same station has the same plan.
 */
public final class Dispatch implements Planner {
    /** How often somebody late is tried further to the front. */
    private static final int TRIES = 60;

    private static final Comparator<Job> BURNING_FIRST = Comparator.comparing(job -> !job.isAtOnce());

    private static final List<Comparator<Job>> ORDERS = List.of(
            Comparator.comparing(Job::latest),
            Comparator.comparing((Job job) -> job.latest().minus(job.work().stay())),
            Comparator.comparing(Job::earliest));

    @Override
    public Plan plan(Station station) {
        return new Dispatching(station).best();
    }

    /** The first plan in which nobody is late, or else the best: enough to know who cannot be in time. */
    Plan firstSafe(Station station) {
        return new Dispatching(station).firstSafe();
    }

    /** The making of one plan. */
    private static final class Dispatching {
        private final Station station;
        private final long begin;
        private final List<Timetable.Asked> all;
        private final Map<VisitId, List<VisitId>> goesBehind = new HashMap<>();
        private final IdentityHashMap<Job, List<Integer>> places = new IdentityHashMap<>();

        Dispatching(Station station) {
            this.station = station;
            this.begin = Timetable.millis(station.from());
            this.all = station.jobs().stream().map(Timetable.Asked::new).toList();
            for (var job : station.jobs()) {
                places.put(job, basins(job));
                station.pin(job)
                        .filter(pin -> pin.before() != null)
                        .ifPresent(pin -> goesBehind
                                .computeIfAbsent(pin.before(), visit -> new ArrayList<>())
                                .add(job.visit()));
            }
        }

        /** Where it may go; the one that was announced before the others. */
        private List<Integer> basins(Job job) {
            var open = station.basins().stream().map(Basin::number).toList();
            var pin = station.pin(job).filter(pinned -> pinned.basin() != null && open.contains(pinned.basin()));
            if (pin.isPresent()) {
                return List.of(pin.get().basin());
            }
            var told = station.announced(job).map(Announced::basin).filter(open::contains);
            if (told.isEmpty()) {
                return open;
            }
            var first = new ArrayList<Integer>(open);
            first.remove(told.get());
            first.add(0, told.get());
            return first;
        }

        Plan best() {
            var best = whole(new Try(sorted(ORDERS.get(0)), false));
            for (var order : ORDERS.subList(1, ORDERS.size())) {
                best = best.orBetter(whole(new Try(sorted(order), false)));
            }
            best = best.orBetter(whole(new Try(asTheyComeFree(), false)));
            if (!station.announced().isEmpty()) {
                best = best.orBetter(whole(new Try(sorted(asAnnounced()), true)));
            }
            return lateToTheFront(best).plan();
        }

        Plan firstSafe() {
            var first = whole(new Try(sorted(ORDERS.get(0)), false));
            return first.score().over() == 0 ? first.plan() : best();
        }

        /**
         * An order, and whether announced turns are kept where they were.
         *
         * @param order who is taken after whom
         */
        private record Try(List<Timetable.Asked> order, boolean keeping) {}

        /** @param tried how it came about */
        private record Made(Try tried, Plan plan, Score score) {
            Made orBetter(Made other) {
                return other.score.compareTo(score) < 0 ? other : this;
            }
        }

        private Made whole(Try tried) {
            var plan = new Laying(tried, Long.MAX_VALUE).plan();
            return new Made(tried, plan, Score.of(station, plan));
        }

        /** What a try makes if it is better than another, which is given up as soon as it can't be. */
        private Made unlessWorse(Try tried, Made than) {
            var laying = new Laying(tried, than.score().over());
            if (laying.isGivenUp()) {
                return than;
            }
            var plan = laying.plan();
            return than.orBetter(new Made(tried, plan, Score.of(station, plan)));
        }

        private Made lateToTheFront(Made from) {
            var best = from;
            var tries = 0;
            var better = true;
            while (better && best.score().over() > 0) {
                better = false;
                for (var late : best.plan().late()) {
                    var order = best.tried().order();
                    var place = indexOf(order, late.job());
                    for (var to = place - 1; to >= 0 && !better && tries < TRIES; to--, tries++) {
                        var next = new Try(
                                pinned(moved(order, place, to)), best.tried().keeping());
                        var made = unlessWorse(next, best);
                        better = made.score().compareTo(best.score()) < 0;
                        best = made;
                    }
                    if (better) {
                        break;
                    }
                }
            }
            return best;
        }

        private static int indexOf(List<Timetable.Asked> order, Job job) {
            var place = 0;
            while (order.get(place).job != job) {
                place++;
            }
            return place;
        }

        private static List<Timetable.Asked> moved(List<Timetable.Asked> order, int from, int to) {
            var next = new ArrayList<>(order);
            next.add(to, next.remove(from));
            return next;
        }

        private List<Timetable.Asked> sorted(Comparator<Job> order) {
            var by = BURNING_FIRST
                    .thenComparing(order)
                    .thenComparing(Job::latest)
                    .thenComparing(Job::anchor);
            return pinned(all.stream()
                    .sorted(Comparator.comparing((Timetable.Asked asked) -> asked.job, by))
                    .toList());
        }

        private Comparator<Job> asAnnounced() {
            return Comparator.comparing(
                    job -> station.announced(job).map(Announced::water).orElse(Instant.MAX));
        }

        /** Each time a basin comes free, whoever is ready by then and must be rinsed first; nobody ready: who is first. */
        private List<Timetable.Asked> asTheyComeFree() {
            var free = new ArrayList<>(station.basins().stream()
                    .map(basin -> Math.max(begin, Timetable.millis(basin.freeFrom())))
                    .toList());
            var left = new ArrayList<>(sorted(Comparator.comparing(Job::latest)));
            var order = new ArrayList<Timetable.Asked>();
            while (!left.isEmpty() && !free.isEmpty()) {
                free.sort(Comparator.naturalOrder());
                var now = free.get(0);
                var next = left.stream()
                        .filter(asked -> asked.job.isAtOnce() || asked.earliest <= now)
                        .findFirst()
                        .orElseGet(() -> left.stream()
                                .min(Comparator.comparing(asked -> asked.job.earliest()))
                                .orElseThrow());
                left.remove(next);
                order.add(next);
                free.set(0, Math.max(now, next.earliest) + next.stay);
            }
            order.addAll(left);
            return pinned(order);
        }

        /** The same order, but for those who were pinned before somebody; pins in a circle are no pins. */
        private List<Timetable.Asked> pinned(List<Timetable.Asked> order) {
            if (goesBehind.isEmpty()) {
                return order;
            }
            var left = new ArrayList<>(order);
            var next = new ArrayList<Timetable.Asked>();
            while (!left.isEmpty()) {
                var open = left.stream()
                        .filter(asked -> asked.job.isAtOnce()
                                || left.stream().noneMatch(other -> goesBefore(other.job, asked.job)))
                        .findFirst()
                        .orElse(left.get(0));
                left.remove(open);
                next.add(open);
            }
            return next;
        }

        private boolean goesBefore(Job first, Job then) {
            return !first.visit().equals(then.visit())
                    && goesBehind.getOrDefault(then.visit(), List.of()).contains(first.visit());
        }

        /** Lays the jobs of one order into a timetable. */
        private final class Laying {
            private final Timetable timetable = new Timetable(station);
            private final boolean keeping;
            private final List<Laid> laid = new ArrayList<>();
            private final List<Job> without = new ArrayList<>();
            private final Set<Job> kept = new HashSet<>();
            private final long most;
            private long over;

            /** @param most it is given up once it harms more than so much, as the first figure of a score says it */
            Laying(Try tried, long most) {
                this.keeping = tried.keeping();
                this.most = most;
                tried.order().stream().takeWhile(asked -> !isGivenUp()).forEach(this::lay);
                if (!isGivenUp()) {
                    laterIfWanted();
                    soonerIfWanted();
                }
            }

            boolean isGivenUp() {
                return over > most;
            }

            Plan plan() {
                return new Plan(
                        laid.stream()
                                .map(one -> new Turn(one.asked.job, one.basin, Instant.ofEpochMilli(one.at)))
                                .toList(),
                        without);
            }

            private void lay(Timetable.Asked asked) {
                var from = Math.max(Math.max(begin, asked.earliest), behind(asked.job));
                var told = station.announced(asked.job);
                if (keeping && told.isPresent()) {
                    var at = Timetable.millis(told.get().water());
                    if (at >= from
                            && basinsOf(asked).contains(told.get().basin())
                            && isFree(asked, told.get().basin(), at)) {
                        kept.add(asked.job);
                        put(asked, told.get().basin(), at);
                        return;
                    }
                }
                var best = OptionalLong.empty();
                var where = 0;
                for (var basin : basinsOf(asked)) {
                    var at = timetable.earliest(asked, basin, from, best.orElse(Timetable.EVER));
                    if (at.isPresent()) {
                        best = at;
                        where = basin;
                    }
                }
                if (best.isPresent()) {
                    put(asked, where, best.getAsLong());
                } else {
                    without.add(asked.job);
                }
            }

            private boolean isFree(Timetable.Asked asked, int basin, long at) {
                var free = timetable.earliest(asked, basin, at);
                return free.isPresent() && free.getAsLong() == at;
            }

            private void put(Timetable.Asked asked, int basin, long at) {
                timetable.take(asked, basin, at);
                laid.add(new Laid(asked, basin, at));
                over += Score.addsToOver(asked.job.harm(), at - asked.latest);
            }

            private List<Integer> basinsOf(Timetable.Asked asked) {
                return places.getOrDefault(asked.job, List.of());
            }

            /** Water of those who were pinned before it. */
            private long behind(Job job) {
                return waters(one -> goesBefore(one.asked.job, job)).max().orElse(Long.MIN_VALUE);
            }

            private long before(Job job) {
                return waters(one -> goesBefore(job, one.asked.job)).min().orElse(Long.MAX_VALUE);
            }

            private java.util.stream.LongStream waters(Predicate<Laid> which) {
                return goesBehind.isEmpty()
                        ? java.util.stream.LongStream.empty()
                        : laid.stream().filter(which).mapToLong(one -> one.at);
            }

            /** From the last to the first, as near to the instant that is wanted as those behind allow. */
            private void laterIfWanted() {
                laid.sort(Comparator.comparingLong((Laid one) -> one.at).reversed());
                for (var one : laid) {
                    var wanted = Math.min(one.asked.wanted, before(one.asked.job));
                    if (one.at < wanted && !kept.contains(one.asked.job)) {
                        move(one, () -> timetable.latest(one.asked, one.basin, one.at, wanted));
                    }
                }
            }

            private void soonerIfWanted() {
                laid.sort(Comparator.comparingLong((Laid one) -> one.at));
                for (var one : laid) {
                    var wanted = Math.max(Math.max(begin, one.asked.wanted), behind(one.asked.job));
                    if (one.at > wanted && !kept.contains(one.asked.job)) {
                        move(one, () -> timetable.earliest(one.asked, one.basin, wanted));
                    }
                }
            }

            private void move(Laid one, java.util.function.Supplier<OptionalLong> where) {
                timetable.giveBack(one.asked, one.basin, one.at);
                one.at = where.get().orElse(one.at);
                timetable.take(one.asked, one.basin, one.at);
            }
        }

        private static final class Laid {
            private final Timetable.Asked asked;
            private final int basin;
            private long at;

            Laid(Timetable.Asked asked, int basin, long at) {
                this.asked = asked;
                this.basin = basin;
                this.at = at;
            }
        }
    }
}
