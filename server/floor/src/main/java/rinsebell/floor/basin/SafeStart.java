package rinsebell.floor.basin;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.Supposed;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.visit.VisitId;

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
        return new Search(floor, now).first(at -> {
            var supposed = new Supposed(floor, at);
            var head = whom == null ? supposed.arrives() : whom;
            supposed.puts(supposed.mixes(portions, BowlReason.FIRST, whom), head);
            return jobs(supposed, head);
        });
    }

    /** If a bowl that is mixed already were put on. */
    public static SafeStart ofPuttingOn(Floor floor, VisitId whom, Bowl bowl, Instant now) {
        return new Search(floor, now).first(at -> {
            var supposed = new Supposed(floor, at);
            supposed.puts(bowl.id(), whom);
            return jobs(supposed, whom);
        });
    }

    private static List<Job> jobs(Supposed supposed, VisitId whom) {
        var floor = supposed.floor();
        return floor.visit(whom)
                .map(head -> Jobs.of(HeadTiming.of(floor, head), floor))
                .orElse(List.of());
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

        SafeStart first(Function<Instant, List<Job>> jobs) {
            for (var at = now; !at.isAfter(now.plus(HORIZON)); at = at.plus(STEP)) {
                var asked = new Asked(station, jobs.apply(at));
                if (asked.isSafe(before)) {
                    return new SafeStart(now, Optional.of(at), asked.turn());
                }
            }
            return new SafeStart(now, Optional.empty(), new Asked(station, jobs.apply(now)).turn());
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
