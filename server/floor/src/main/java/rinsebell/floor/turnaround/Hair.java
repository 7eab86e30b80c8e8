package rinsebell.floor.turnaround;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.basin.Job;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/** What is on a head and has to come to a basin. */
final class Hair {
    private final Floor floor;
    private final Visit visit;
    private final Job job;
    private final Map<Instant, Window> supposed = new HashMap<>();

    final Instant firstOn;
    final boolean hasFoils;

    /** When it had best be rinsed; null while nobody has decided that it is to be. */
    final @Nullable Instant decided;

    /** Before that hardly anybody decides. */
    final Instant lookAgain;

    /** Since when somebody puts it on; null where the last of all is on. */
    final @Nullable Instant goesOnSince;

    /** As the floor knows it; while somebody still puts it on, with the longest that may take. */
    final Window window;

    /**
     * @param earliest when it may be rinsed
     * @param latest when it must be
     */
    record Window(Instant earliest, Instant latest) {}

    Hair(Floor floor, Visit visit, Job job) {
        this.floor = floor;
        this.visit = visit;
        this.job = job;
        var timing = HeadTiming.of(floor, visit);
        var first = visit.onHair().stream().map(Application::firstOn);
        var goesOn = visit.live().stream().filter(one -> one.lastOn() == null).map(Application::firstOn);
        firstOn = first.min(Instant::compareTo).orElse(job.earliest());
        hasFoils = visit.onHair().stream().anyMatch(one -> one.area().isFoils());
        decided = isDecided(timing) ? job.wanted() : null;
        lookAgain = timing.lookAgain();
        goesOnSince = goesOn.max(Instant::compareTo).orElse(null);
        window = new Window(job.earliest(), job.latest());
    }

    private static boolean isDecided(HeadTiming timing) {
        return timing.isOffAtOnce()
                || timing.rinseBy().filter(by -> by.why() == Limit.Why.DECIDED).isPresent();
    }

    /** As it would be if the last were on by then. */
    Window window(Instant lastOn) {
        return supposed.computeIfAbsent(lastOn, this::supposing);
    }

    private Window supposing(Instant lastOn) {
        var timing = HeadTiming.of(floor, visit.supposingLastOn(lastOn));
        var latest = timing.rinseBy().map(Limit::at).orElse(job.latest());
        var ready = timing.readyFrom().orElse(job.earliest());
        return new Window(Instants.later(job.earliest(), Instants.earlier(ready, latest)), latest);
    }
}
