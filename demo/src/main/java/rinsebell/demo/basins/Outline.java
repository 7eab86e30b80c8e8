package rinsebell.demo.basins;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.demo.basins.Sight.Stage;
import rinsebell.floor.basin.Basin;
import rinsebell.floor.basin.Hands;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Work;
import rinsebell.floor.visit.VisitId;

/** What there is to plan, as far as it can be known at an instant. */
final class Outline {
    private static final Instant OPENS = Instant.parse("2026-05-16T07:00:00Z");

    /**
     * What is planned is to come so many seconds before a rinse-by, because nobody knows how long things will
     * take. House number.
     */
    private static final long MARGIN = 5 * 60;

    /** Whoever is so many seconds past goes before everybody. House number. */
    private static final long LONGEST_PAST = 20 * 60;

    /** Lightened hair is done after this part of the time that is allowed: the middle of what this house sees. */
    private static final double USUAL = 0.7;

    private final Sight sight;
    private final Estimate estimate;

    Outline(Sight sight) {
        this.sight = sight;
        this.estimate = new Estimate(sight);
    }

    static Instant instant(long second) {
        return OPENS.plusSeconds(second);
    }

    static long second(Instant instant) {
        return Duration.between(OPENS, instant).toSeconds();
    }

    static VisitId visit(int head) {
        return new VisitId(head);
    }

    /** @param others who is not on yet */
    Station station(List<Job> others) {
        var jobs = Stream.concat(
                        sight.heads().stream()
                                .filter(head -> head.stage() != Stage.THERE)
                                .map(this::job),
                        others.stream())
                .toList();
        return new Station(instant(sight.now()), basins(), hands(), jobs);
    }

    private List<Basin> basins() {
        return IntStream.rangeClosed(1, sight.basins())
                .mapToObj(number -> new Basin(number, instant(estimate.free(number)), OPENS))
                .toList();
    }

    private Hands hands() {
        var left = Hands.always(sight.hands());
        for (var head : sight.heads()) {
            for (var held : estimate.held(head)) {
                left = left.without(instant(held.from()), instant(held.until()));
            }
        }
        return left;
    }

    private Job job(Sight.Seen head) {
        var begun = head.stage() == Stage.BEFORE || head.stage() == Stage.PREPARED;
        var work = begun ? new Work(Duration.ZERO, head.work().parts()) : head.work();
        var soonest = head.stage() == Stage.BEFORE
                ? estimate.prepared(head)
                : sight.now() + work.before().toSeconds();
        return job(head.number(), head.kind(), work, Math.max(soonest, head.ready()), wanted(head), head.by());
    }

    private static long wanted(Sight.Seen head) {
        return head.asked() == Sight.NOBODY
                ? usual(head.kind(), head.firstOn(), head.ready(), head.by())
                : head.asked();
    }

    private static long usual(Kind kind, long firstOn, long ready, long by) {
        return kind.lightens() ? Math.max(ready, firstOn + Math.round(USUAL * (by - firstOn))) : ready;
    }

    /** Somebody whose bowl would be mixed now. */
    Job ifMixed(Head head) {
        var on = sight.now() + Course.MIXING;
        var ready = on + head.ready();
        var by = on + head.by();
        return job(head.number(), head.kind(), head.work(), ready, usual(head.kind(), on, ready, by), by);
    }

    /** Late minutes are counted alike, so that without this a long stay could be put off for short ones again and again. */
    private Job.Harm harm(Kind kind, long by) {
        return sight.now() < by + LONGEST_PAST ? kind.harm() : Job.Harm.NOW;
    }

    private Job job(int number, Kind kind, Work work, long earliest, long wanted, long by) {
        var latest = by - MARGIN;
        var best = Math.max(earliest, Math.min(wanted, latest));
        return new Job(
                visit(number), number, OPENS, instant(earliest), instant(best), instant(latest), harm(kind, by), work);
    }
}
