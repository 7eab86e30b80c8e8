package rinsebell.floor.basin;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/**
 * When a bowl may go on so that its own head has a basin in time and nobody else is worse off: the earliest such minute.
 * Later is not always safer, since a later rinse can meet others, so that every minute is asked in its turn.
 *
 * @param now the minute at which was asked
 * @param start the earliest safe minute; empty where there is none within {@link #HORIZON}
 * @param turn the turn of the head then, or now where there is no safe minute; empty where its directions name no rinse-by
 *     or no basin is in order
 */
public record SafeStart(Instant now, Optional<Instant> start, Optional<Turn> turn) {
    /** So far ahead is looked: whoever waits longer comes another time. House number. */
    public static final Duration HORIZON = Duration.ofHours(2);

    private static final Duration STEP = Duration.ofMinutes(1);

    public boolean isNow() {
        return start.filter(now::equals).isPresent();
    }

    /**
     * If this were mixed, and all of it put on at once.
     *
     * @param whom null for nobody yet: somebody who would come now
     */
    public static SafeStart ofMixing(Floor floor, @Nullable VisitId whom, List<Portion> portions, Instant now) {
        var mixed = new BowlId(floor.lastSeq() + 2);
        return new Search(floor, now)
                .first(at -> new If(floor, at)
                        .here(whom)
                        .happens(
                                rinsebell.floor.Stream.day(floor.salon().dayOf(at)),
                                mixed.value(),
                                new DayEvent.Mixed(portions, BowlReason.FIRST, whom))
                        .puttingOn(mixed));
    }

    /** If a bowl that is mixed already were put on. */
    public static SafeStart ofPuttingOn(Floor floor, VisitId whom, Bowl bowl, Instant now) {
        return new Search(floor, now).first(at -> new If(floor, at).here(whom).puttingOn(bowl.id()));
    }

    /** The head that it is about, on the floor that would be. */
    private record Supposed(Floor floor, Optional<Visit> visit) {
        List<Job> jobs() {
            return visit.map(head -> Jobs.of(HeadTiming.of(floor, head), floor)).orElse(List.of());
        }
    }

    /** What would happen at an instant. */
    private static final class If {
        private final Floor floor;
        private final Instant at;
        private final List<Fact> facts = new ArrayList<>();
        private VisitId whom = new VisitId(0);

        If(Floor floor, Instant at) {
            this.floor = floor;
            this.at = at;
        }

        If here(@Nullable VisitId known) {
            whom = known == null ? new VisitId(floor.lastSeq() + 1) : known;
            return known != null
                    ? this
                    : happens(
                            rinsebell.floor.Stream.visit(whom),
                            whom.value(),
                            new StayEvent.Arrived(Place.BENCH, null, null, null));
        }

        If happens(rinsebell.floor.Stream stream, long seq, Event event) {
            facts.add(new Fact(seq, stream, at, at, null, event));
            return this;
        }

        Supposed puttingOn(BowlId bowl) {
            var head = rinsebell.floor.Stream.visit(whom);
            var on = new ApplicationId(floor.lastSeq() + 3);
            var area = floor.visit(whom).map(If::freeArea).orElse(Area.LENGTHS);
            happens(head, on.value(), new WorkEvent.PutOn(bowl, area, Zone.OFF_SCALP, Cover.OPEN, null));
            happens(head, on.value() + 1, new WorkEvent.LastOn(on));
            var next = floor.with(facts);
            return new Supposed(next, next.visit(whom));
        }

        /** One that nothing is on, so that what is on stays uncovered. */
        private static Area freeArea(Visit visit) {
            var taken = visit.onHair().stream().map(one -> one.area()).toList();
            return Arrays.stream(Area.values())
                    .filter(area -> area != Area.WHOLE_HEAD && !taken.contains(area))
                    .findFirst()
                    .orElse(Area.WHOLE_HEAD);
        }
    }

    private static final class Search {
        private final Station station;
        private final Instant now;
        private final Score before;

        Search(Floor floor, Instant now) {
            var outlook = floor.outlook(now);
            this.station = outlook.station();
            this.now = Stations.minute(now);
            this.before = Score.of(station, outlook.plan());
        }

        SafeStart first(Function<Instant, Supposed> supposed) {
            for (var at = now; !at.isAfter(now.plus(HORIZON)); at = at.plus(STEP)) {
                var asked = new Asked(station, supposed.apply(at).jobs());
                if (asked.isSafe(before)) {
                    return new SafeStart(now, Optional.of(at), asked.turn());
                }
            }
            return new SafeStart(
                    now,
                    Optional.empty(),
                    new Asked(station, supposed.apply(now).jobs()).turn());
        }
    }

    /** The plan with the jobs that the head would have then, in place of those that it has. */
    private static final class Asked {
        private final List<Job> own;
        private final Station station;
        private final Plan plan;

        Asked(Station now, List<Job> own) {
            this.own = own;
            var others = now.jobs().stream()
                    .filter(job -> own.stream().noneMatch(one -> one.visit().equals(job.visit())));
            this.station = now.with(Stream.concat(others, own.stream()).toList());
            this.plan = new Dispatch().plan(station);
        }

        boolean isSafe(Score before) {
            var isLate = plan.late().stream().anyMatch(turn -> own.contains(turn.job()))
                    || plan.without().stream().anyMatch(own::contains);
            return !isLate && Score.of(station, plan).over() <= before.over();
        }

        Optional<Turn> turn() {
            return plan.turns().stream()
                    .filter(turn -> own.contains(turn.job()))
                    .findFirst();
        }
    }
}
