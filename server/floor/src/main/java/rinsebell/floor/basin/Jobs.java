package rinsebell.floor.basin;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.Floor;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.floor.visit.Visit;

/** The coming stays at a basin of one head. */
final class Jobs {
    private Jobs() {}

    /** One for all that may be rinsed together; what must be off before the rest is ready asks for a stay of its own. */
    static List<Job> of(HeadTiming head, Floor floor) {
        return together(head).stream()
                .flatMap(some -> of(new HeadTiming(head.visit(), some), floor, head).stream())
                .toList();
    }

    /** As few groups as there can be: who must be off first takes along all who are ready by then. */
    private static List<List<Timing>> together(HeadTiming head) {
        var left = new ArrayList<>(head.timings());
        left.sort(Comparator.comparing(Jobs::by));
        var groups = new ArrayList<List<Timing>>();
        while (!left.isEmpty()) {
            var by = by(left.get(0));
            var first = left.get(0);
            var group = left.stream()
                    .filter(timing -> timing == first || !ready(timing).isAfter(by))
                    .toList();
            left.removeAll(group);
            groups.add(group);
        }
        return groups;
    }

    private static Instant by(Timing timing) {
        return timing.rinseBy().map(Limit::at).orElse(Instant.MAX);
    }

    private static Instant ready(Timing timing) {
        return timing.application().isLive() ? timing.ready().orElse(Instant.MIN) : Instant.MIN;
    }

    private static Optional<Job> of(HeadTiming some, Floor floor, HeadTiming whole) {
        return some.rinseBy().map(limit -> job(some, limit, floor, whole));
    }

    private static Job job(HeadTiming some, Limit limit, Floor floor, HeadTiming whole) {
        var applications = some.timings().stream().map(Timing::application).toList();
        var first = first(applications);
        var last = applications.stream()
                .map(Application::firstOn)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        var ready = some.readyFrom();
        // Where rinse-by comes before ready-from, rinse-by wins: that is no clash of basins.
        var earliest = Instants.earlier(ready.orElse(first.firstOn()), limit.at());
        var wanted = wanted(some, limit, floor);
        return new Job(
                some.visit().id(),
                first.id().value(),
                Instants.later(last, broughtForward(whole.visit(), applications)),
                earliest,
                some.isOffAtOnce() ? earliest : Instants.earlier(wanted, limit.at()),
                limit.at(),
                harm(some, limit),
                work(some, floor));
    }

    /**
     * Colour is done when it is ready. A lightener stays on until it is light enough: as long as such heads stay on here,
     * or, before that is known, until its rinse-by; nobody knows before somebody looks and decides.
     */
    private static Instant wanted(HeadTiming some, Limit limit, Floor floor) {
        var applications = some.timings().stream().map(Timing::application).toList();
        var undecided = limit.why() != Limit.Why.DECIDED
                && some.timings().stream().anyMatch(timing -> timing.terms().hasHardDevelopment());
        var ready = some.readyFrom();
        var done = undecided || ready.isEmpty() ? usual(first(applications), limit, floor) : ready.get();
        return Instants.later(Instants.later(done, ready.orElse(done)), some.lookAgain());
    }

    private static Instant usual(Application first, Limit limit, Floor floor) {
        var allowed = Duration.between(first.firstOn(), limit.at());
        return new Middles(floor.salon())
                .developing()
                .map(share -> first.firstOn().plusSeconds(Math.round(allowed.toSeconds() * share)))
                .orElse(limit.at());
    }

    private static Application first(List<Application> applications) {
        return applications.stream()
                .min(Comparator.comparing(Application::firstOn))
                .orElseThrow();
    }

    private static Job.Harm harm(HeadTiming some, Limit limit) {
        if (some.isOffAtOnce()) {
            return Job.Harm.NOW;
        }
        return limit.hard() ? Job.Harm.HAIR : Job.Harm.RESULT;
    }

    private static Work work(HeadTiming some, Floor floor) {
        var foils = some.timings().stream()
                .anyMatch(timing -> timing.application().area().isFoils());
        var toner = Toners.isToCome(floor, some.visit());
        return new Middles(floor.salon()).work(some.workingTime(floor.salon().policy()), foils, toner);
    }

    /** When somebody last decided to rinse at once, or the client had to ask for it. */
    private static Instant broughtForward(Visit visit, List<Application> applications) {
        var strands = applications.stream()
                .flatMap(application -> application.lastCheck().stream())
                .filter(StrandCheck::saysRinse)
                .map(StrandCheck::at);
        var scalp =
                visit.lastScalpCheck().stream().filter(ScalpCheck::saysRinse).map(ScalpCheck::at);
        var complaints = visit.severeComplaints().map(Complaint::at);
        return Stream.of(strands, scalp, complaints)
                .flatMap(instants -> instants)
                .reduce(Instant.MIN, Instants::later);
    }
}
