package rinsebell.app.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Outlook;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Planner;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.command.Announce;

/**
 * Looks for a better plan of the basins when the floor has changed, and has it announced. It works on a thread of its own
 * and only leaves word, so no press waits for it; until it has found something the dispatch rule's plan counts.
 */
public final class PlanWatch implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(PlanWatch.class);

    /** Presses come in groups; what is planned in between nobody reads. */
    private static final Duration SETTLES = Duration.ofSeconds(1);

    private final Supplier<Floor> floor;
    private final Supplier<Instant> now;
    private final Planner planner;
    private final Consumer<Announce> announce;
    private final AtomicBoolean asked = new AtomicBoolean();
    private final ScheduledExecutorService thread = Threads.timer("plan-watch");
    private long announcedFor = -1;

    /**
     * @param floor as it stands
     * @param now the salon's time
     * @param planner never worse than the dispatch rule
     * @param announce hands the plan in as a press, and does not wait for it
     */
    public PlanWatch(Supplier<Floor> floor, Supplier<Instant> now, Planner planner, Consumer<Announce> announce) {
        this.floor = floor;
        this.now = now;
        this.planner = planner;
        this.announce = announce;
    }

    /** The floor has changed. Returns at once. */
    public void moved() {
        if (asked.compareAndSet(false, true)) {
            try {
                var unused = thread.schedule(this::look, SETTLES.toMillis(), TimeUnit.MILLISECONDS);
            } catch (RejectedExecutionException closed) {
                LOG.debug("the watch is closed");
            }
        }
    }

    private void look() {
        asked.set(false);
        try {
            plan(floor.get());
        } catch (RuntimeException e) {
            LOG.error("the basins can't be planned; the dispatch rule's plan stands", e);
        }
    }

    /** The announcement is the newest fact of its floor, and changes nothing that is to be planned. */
    private void plan(Floor known) {
        if (known.lastSeq() == announcedFor + 1) {
            return;
        }
        var outlook = known.outlook(now.get());
        var told = told(best(outlook));
        if (isNews(told, outlook, known.day().announced())) {
            announcedFor = known.lastSeq();
            announce.accept(new Announce(known.lastSeq(), told));
        }
    }

    private Plan best(Outlook outlook) {
        var shown = outlook.plan();
        var score = Score.of(outlook.station(), shown);
        if (score.isPerfect()) {
            return shown;
        }
        var found = planner.plan(outlook.station());
        return Score.of(outlook.station(), found).compareTo(score) < 0 ? found : shown;
    }

    private static Map<Long, Announced> told(Plan plan) {
        return plan.turns().stream().collect(Collectors.toMap(turn -> turn.job().anchor(), Turn::told));
    }

    /** Somebody new, or somebody who goes elsewhere or at another time; that somebody has gone is told by the floor. */
    private static boolean isNews(Map<Long, Announced> told, Outlook outlook, Map<Long, Announced> before) {
        return outlook.station().jobs().stream().anyMatch(job -> {
            var next = told.get(job.anchor());
            var last = before.get(job.anchor());
            return next != null && (last == null || last.isMoved(next));
        });
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
