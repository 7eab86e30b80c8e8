package rinsebell.web.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rinsebell.floor.basin.SafeStart;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Develops;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.web.view.Line;
import rinsebell.web.view.Urgency;

/** The lines of facts about a head: rinse by, ready from, last check. */
final class HeadLines {
    private final HeadTelling head;
    private final Moment moment;

    HeadLines(HeadTelling head) {
        this.head = head;
        this.moment = head.moment;
    }

    List<Line> all() {
        var lines = new ArrayList<Line>();
        var many = head.timing.timings().size() > 1;
        alarms(many, lines);
        together().ifPresent(lines::add);
        foilsOut(lines);
        new HeatTelling(head).line().ifPresent(lines::add);
        head.timing.timings().forEach(timing -> application(timing, many, lines));
        lines.addAll(new TurnTelling(moment).lines(head.visit));
        waitingBowl().ifPresent(lines::add);
        head.visit
                .lastScalpCheck()
                .ifPresent(check -> lines.add(
                        new Line(moment.say("line.scalp", moment.clock(check.at())), moment.say(check.finding()))));
        return lines;
    }

    /** Whether there is a basin for the bowl that stands ready for this head, if it goes on now. */
    private Optional<Line> waitingBowl() {
        return moment.floor().waitingBowls().stream()
                .filter(bowl -> head.visit.id().equals(bowl.forVisit()) && bowl.isRecipeKnown())
                .findFirst()
                .map(bowl -> SafeStart.ofPuttingOn(moment.floor(), head.visit.id(), bowl, moment.now()))
                .map(safe -> SafeStartTelling.say(moment, safe))
                .filter(said -> !said.isEmpty())
                .map(said -> new Line(moment.say("line.waiting_bowl"), said));
    }

    /** What was seen last and does not let what is on stay on: it stands before all else. */
    private void alarms(boolean many, List<Line> lines) {
        var findings = new HeadFindings(head.visit);
        findings.snapped()
                .forEach(application -> lines.add(alarm(
                        where(many, application) + moment.say("line.snaps"),
                        HeadFindings.stretched(application).map(StrandCheck::at).orElseThrow())));
        findings.sore().ifPresent(check -> lines.add(alarm(moment.say("line.sore"), check.at())));
    }

    /** When all that is on may be rinsed at once, or that it may not; while something hurts nobody plans. */
    private Optional<Line> together() {
        var by = head.timing.rinseBy().filter(limit -> limit.why() != Limit.Why.DISCOMFORT);
        if (head.timing.timings().size() < 2 || by.isEmpty()) {
            return Optional.empty();
        }
        if (head.timing.hasNoCommonRinse()) {
            return Optional.of(
                    new Line(moment.say("line.together"), moment.say("line.together.none"), null, Urgency.MEDIUM));
        }
        var until = moment.clock(by.get().at());
        var window = head.timing
                .readyFrom()
                .map(from -> moment.say("line.together.window", moment.clock(from), until))
                .orElseGet(() -> moment.say("line.together.until", until));
        return Optional.of(new Line(moment.say("line.together"), window));
    }

    private Line alarm(String label, Instant at) {
        return new Line(label, moment.say("line.off_now", moment.clock(at)), null, Urgency.HIGH);
    }

    private String where(boolean many, Application application) {
        return many ? moment.say("line.area", moment.say(application.area())) : "";
    }

    private void application(Timing timing, boolean many, List<Line> lines) {
        var where = where(many, timing.application());
        timing.rinseBy().ifPresent(limit -> rinseBy(where, timing, limit, lines));
        timing.ready()
                .map(at -> moment.say("line.ready_from.at", moment.clock(at), ready(timing)))
                .or(() ->
                        waitsForLastOn(timing) ? Optional.of(moment.say("line.ready_from.unknown")) : Optional.empty())
                .ifPresent(words -> lines.add(new Line(where + moment.say("line.ready_from"), words)));
        if (timing.isReadyTooLate()
                && timing.rinseBy().filter(HeadLines::isPlanned).isPresent()) {
            lines.add(new Line("", moment.say("line.ready_too_late"), null, Urgency.MEDIUM));
        }
        timing.application().lastCheck().ifPresent(check -> lines.add(looked(timing.application(), check)));
    }

    private void rinseBy(String where, Timing timing, Limit limit, List<Line> lines) {
        var heat = new HeatTelling(head);
        var why = moment.say(limit.why()) + (limit.why() == Limit.Why.DEVELOPED ? heat.assumed(timing) : "");
        lines.add(new Line(
                where + moment.say("line.rinse_by"),
                moment.say("line.why", moment.clock(limit.at()), why),
                limit.at(),
                Urgency.CALM));
    }

    /** What was said at a look does not hang on the heat. */
    private String ready(Timing timing) {
        var saidSo =
                timing.application().lastCheck().filter(StrandCheck::saysRinse).isPresent();
        return saidSo ? "" : new HeatTelling(head).assumed(timing);
    }

    /** Only what counts from the last of it on becomes known with it. */
    private static boolean waitsForLastOn(Timing timing) {
        return timing.application().lastOn() == null
                && timing.terms().develops().stream()
                        .anyMatch(develops -> develops.counted() == Develops.Counted.FROM_LAST_ON);
    }

    /** When foils have to begin to come out, so that water is on in time; while something hurts they come out now. */
    private void foilsOut(List<Line> lines) {
        if (head.timing
                        .rinseBy()
                        .filter(limit -> limit.why() != Limit.Why.DISCOMFORT)
                        .isPresent()
                && new HeadNext(head).areFoilsIn()) {
            head.timing
                    .startBy(moment.floor())
                    .ifPresent(at ->
                            lines.add(new Line(moment.say("line.foils_out"), moment.clock(at), at, Urgency.CALM)));
        }
    }

    /** The last look; where nothing was said about the strand, what was seen before stays in view. */
    private Line looked(Application application, StrandCheck last) {
        return HeadFindings.read(application)
                .filter(read -> !read.equals(last))
                .map(read -> new Line(
                        moment.say("line.check", moment.clock(read.at())),
                        moment.say(
                                "line.check.again",
                                FindingTelling.strand(moment, read.finding(), null),
                                moment.clock(last.at()),
                                decided(last))))
                .orElseGet(() -> new Line(moment.say("line.check", moment.clock(last.at())), finding(last)));
    }

    private String decided(StrandCheck last) {
        return FindingTelling.decided(moment, last.decision())
                .map(words -> ", " + words)
                .collect(Collectors.joining());
    }

    /** By the directions; nobody expects a rinse that somebody decided or that hurts to wait. */
    private static boolean isPlanned(Limit limit) {
        return limit.why() != Limit.Why.DISCOMFORT && limit.why() != Limit.Why.DECIDED;
    }

    private String finding(StrandCheck check) {
        return FindingTelling.strand(moment, check.finding(), check.decision());
    }
}
