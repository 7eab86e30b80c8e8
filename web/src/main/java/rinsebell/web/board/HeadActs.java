package rinsebell.web.board;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.visit.Ending;

/**
 * What a head's page offers. The first answers what is loudest there, or what comes next, so that the main press and what
 * is said beside it never disagree.
 */
final class HeadActs {
    private final HeadTelling head;
    private final HeadNext next;

    HeadActs(HeadTelling head) {
        this.head = head;
        this.next = new HeadNext(head);
    }

    List<Act> all() {
        var acts = new LinkedHashSet<Act>();
        if (new HeadFindings(head.visit).bad().isPresent()) {
            acts.add(Act.RINSE);
        }
        next.asking().forEach(bell -> answer(bell).ifPresent(acts::add));
        acts.addAll(isAnythingOn() ? whileOn() : whileNothingIsOn());
        acts.add(Act.MORE);
        return List.copyOf(acts);
    }

    Act main() {
        return all().get(0);
    }

    /** The table of what answers a bell; empty for one that nothing done at this head answers. */
    private Optional<Act> answer(Bell bell) {
        return switch (bell.kind()) {
            case RINSE -> Optional.of(isDue(bell) || !next.areFoilsIn() ? Act.RINSE : Act.FOILS_OUT);
            case BURNING, HOT_FOIL -> Optional.of(isAnythingOn() ? Act.RINSE : Act.SCALP);
            case FORBIDDEN_ZONE, FORBIDDEN_MIXTURE, PASSED_GATE, LEFT_WITH_IT_ON -> Optional.of(Act.RINSE);
            case TINGLING, SCALP_CHECK, SCALP_AFTER_RINSE -> Optional.of(Act.SCALP);
            case STRAND_CHECK, READY -> Optional.of(Act.STRAND);
            case FORBIDDEN_HEAT, HEAT_END -> Optional.of(Act.HEAT_OFF);
            case FORBIDDEN_COVER, COVER_END -> Optional.of(Act.COVER);
            case LAST_ON_MISSING -> Optional.of(Act.LAST_ON);
            case GATE_OPEN -> Optional.of(Act.GATE);
            case BOWL_WAITING -> Optional.of(isPast(bell) || isScalpAtRest() ? Act.THROW_AWAY : Act.PUT_ON);
            case ROUND_OVER -> Optional.of(isScalpAtRest() ? Act.STOP : Act.MIX);
            case BASINS_CLASH -> Optional.empty();
        };
    }

    private boolean isDue(Bell bell) {
        return step(bell).filter(step -> step.compareTo(Stage.Step.DUE) >= 0).isPresent();
    }

    private boolean isPast(Bell bell) {
        return step(bell).filter(Stage.Step.PAST::equals).isPresent();
    }

    private Optional<Stage.Step> step(Bell bell) {
        return bell.at(head.moment.now()).map(Stage::step);
    }

    private boolean isAnythingOn() {
        return head.timing.isAnythingOn();
    }

    private boolean isScalpAtRest() {
        return new Restrictions(head.moment.floor(), head.visit).restsAt(head.moment.now());
    }

    private List<Act> whileOn() {
        var acts = new ArrayList<Act>();
        if (head.visit.live().stream().anyMatch(application -> application.lastOn() == null)) {
            acts.add(Act.LAST_ON);
        }
        next.coming().stream().map(HeadNext.Coming::act).forEach(acts::add);
        acts.addAll(List.of(Act.STRAND, Act.SCALP, Act.RINSE));
        if (head.isBowlWaiting()) {
            acts.add(Act.PUT_ON);
        }
        if (head.visit.heat().isPresent()) {
            acts.add(Act.HEAT_OFF);
        }
        return acts;
    }

    /** The questions come before the first bowl, a bowl before the brush, and after a rinse what is left to do. */
    private List<Act> whileNothingIsOn() {
        var acts = new ArrayList<Act>();
        head.visit.lastOff().ifPresentOrElse(off -> acts.addAll(after(off)), () -> acts.addAll(before()));
        if (!head.visit.gate().isComplete()) {
            acts.add(head.visit.lastOff().isPresent() ? acts.size() : 0, Act.GATE);
        }
        acts.add(Act.LEAVE);
        return acts;
    }

    private List<Act> before() {
        return List.of(bowl(), Act.ALREADY_ON);
    }

    private Act bowl() {
        return head.isBowlWaiting() ? Act.PUT_ON : Act.MIX;
    }

    private List<Act> after(Ending off) {
        var acts = new ArrayList<Act>();
        var round = head.visit.round();
        if (round.towelDriedAt() == null) {
            acts.add(Act.TOWEL_DRIED);
        }
        if (round.lift() == null && round.stoppedAt() == null && lifted(off) && !isScalpAtRest()) {
            acts.add(Act.LIFT);
        }
        if (isGoingOn()) {
            acts.add(bowl());
        }
        acts.add(isToBeJudged() ? Act.STOP : Act.LEAVE);
        acts.addAll(List.of(Act.SCALP, bowl()));
        return acts;
    }

    /** A bowl stands mixed for this head, or it was lightened and something usually follows. */
    private boolean isGoingOn() {
        var round = head.visit.round();
        return !isScalpAtRest() && (head.isBowlWaiting() || (round.lift() != null && round.stoppedAt() == null));
    }

    /** Not light enough, and nobody said to leave it at that. */
    private boolean isToBeJudged() {
        return head.own().stream().anyMatch(bell -> bell.kind() == BellKind.ROUND_OVER);
    }

    /** Whether what came off last was there to lift; after a toner nobody asks whether it is light enough. */
    private boolean lifted(Ending off) {
        return head.visit.applications().stream()
                .filter(one -> one.ending() != null && one.ending().at().equals(off.at()))
                .map(one -> Timing.of(head.moment.floor(), head.visit, one))
                .anyMatch(timing -> timing.terms().hasHardDevelopment());
    }
}
