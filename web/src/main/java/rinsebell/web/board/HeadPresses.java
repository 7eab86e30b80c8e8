package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Cover;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Complaint;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Hidden;
import rinsebell.web.view.Press.Weight;

/** The presses for what can be done at a head now, in the order of {@link HeadActs}. */
final class HeadPresses {
    private static final Set<BellKind> OF_COVERS = Set.of(BellKind.FORBIDDEN_COVER, BellKind.COVER_END);

    private final HeadTelling head;
    private final Moment moment;
    private final String base;
    private final BasinRows basins;

    HeadPresses(HeadTelling head, BasinRows basins) {
        this.head = head;
        this.basins = basins;
        this.moment = head.moment;
        this.base = "/visits/" + head.visit.id().value();
    }

    List<Press> all() {
        var all = new ArrayList<>(
                new HeadActs(head).all().stream().map(this::press).toList());
        all.set(0, all.get(0).as(Weight.MAIN));
        return all;
    }

    /** The press that a list of heads shows first. */
    List<Press> main() {
        return List.of(all().get(0));
    }

    private Press press(Act act) {
        return switch (act) {
            case RINSE -> rinse();
            case LAST_ON -> sends(act, lastOnMissing());
            case FOILS_OUT -> foilsOut();
            case COVER -> cover();
            case HEAT_OFF, TOWEL_DRIED, STOP, LEAVE -> sends(act, Optional.empty());
            case MIX -> opens(act, "/mixtures?visit=" + head.visit.id().value());
            case THROW_AWAY -> throwAway();
            case STRAND, SCALP, GATE, PUT_ON, ALREADY_ON, LIFT, MORE -> opens(act);
        };
    }

    private Optional<Application> lastOnMissing() {
        return head.visit.live().stream()
                .filter(application -> application.lastOn() == null)
                .findFirst();
    }

    /** One press where only one bowl is in foils; else it is asked which. */
    private Press foilsOut() {
        var inFoils = head.visit.live().stream()
                .filter(application -> application.area().isFoils())
                .toList();
        return inFoils.size() == 1 ? sends(Act.FOILS_OUT, inFoils.stream().findFirst()) : opens(Act.FOILS_OUT);
    }

    /** The cover that must not be there comes off in one press, where the directions let it lie open. */
    private Press cover() {
        return bells(OF_COVERS)
                .flatMap(bell ->
                        head.visit.application(new ApplicationId(bell.key().subject())))
                .filter(application -> mayBeOpen(application))
                .map(application -> Press.sends(
                        moment.say("press.cover_off"),
                        moment.say("press.cover_off.hint"),
                        base + "/cover",
                        on(application),
                        new Hidden("cover", Cover.OPEN.name())))
                .orElseGet(() -> opens(Act.COVER));
    }

    private boolean mayBeOpen(Application application) {
        return Timing.of(moment.floor(), head.visit, application)
                .terms()
                .limits()
                .cover(Cover.OPEN)
                .allowed();
    }

    private Press throwAway() {
        return opens(
                Act.THROW_AWAY,
                bells(Set.of(BellKind.BOWL_WAITING))
                        .map(bell -> "/bowls/" + bell.key().subject() + "/throw-away")
                        .orElse("/bowls"));
    }

    private Optional<Bell> bells(Set<BellKind> kinds) {
        return new HeadNext(head)
                .asking().stream().filter(bell -> kinds.contains(bell.kind())).findFirst();
    }

    /** Water is on, on everything, now: one press. Where else, or on which of it, is asked under "more". */
    Press rinse() {
        var basin = basins.freeFor(head.visit);
        var hint = basin.map(at -> moment.say("press.rinse.at", at.letter())).orElse(moment.say("press.rinse.hint"));
        return basin.map(at ->
                        Press.sends(moment.say("press.rinse"), hint, base + "/rinse", new Hidden("basin", at.letter())))
                .orElseGet(() -> Press.sends(moment.say("press.rinse"), hint, base + "/rinse"));
    }

    private Press sends(Act act, Optional<Application> which) {
        var fields = which.map(HeadPresses::on).stream().toArray(Hidden[]::new);
        return Press.sends(moment.say(act.key()), moment.say(act.key() + ".hint"), base + "/" + act.address(), fields);
    }

    private static Hidden on(Application application) {
        return new Hidden("application", String.valueOf(application.id().value()));
    }

    private Press opens(Act act) {
        return opens(act, base + "/" + act.address());
    }

    private Press opens(Act act, String address) {
        return Press.opens(moment.say(act.key()), moment.say(act.key() + ".hint"), address);
    }

    static List<Press> discomfort(HeadTelling head) {
        return List.of(
                complain(head, Complaint.Grade.TINGLING, Weight.CARE),
                complain(head, Complaint.Grade.BURNING, Weight.DANGER),
                complain(head, Complaint.Grade.HOT_FOIL, Weight.DANGER));
    }

    private static Press complain(HeadTelling head, Complaint.Grade grade, Weight weight) {
        var key = Moment.key(grade);
        return Press.sends(
                        head.moment.say(key),
                        head.moment.say(key + ".hint"),
                        "/visits/" + head.visit.id().value() + "/discomfort",
                        new Hidden("grade", grade.name()))
                .as(weight);
    }
}
