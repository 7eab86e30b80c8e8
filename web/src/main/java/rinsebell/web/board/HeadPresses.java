package rinsebell.web.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.visit.Complaint;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Hidden;
import rinsebell.web.view.Press.Weight;
import rinsebell.web.view.Urgency;

/** What can be recorded or opened for a head now, the likeliest first. */
final class HeadPresses {
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
        var all = new ArrayList<Press>();
        head.visit.live().stream()
                .filter(application -> application.lastOn() == null)
                .findFirst()
                .ifPresent(application -> all.add(Press.sends(
                        moment.say("press.last_on"),
                        moment.say("press.last_on.hint"),
                        base + "/last-on",
                        new Hidden(
                                "application", String.valueOf(application.id().value())))));
        all.addAll(head.timing.isAnythingOn() ? whileOn() : whileNothingIsOn());
        all.add(open("more"));
        all.set(0, all.get(0).as(Weight.MAIN));
        return all;
    }

    private List<Press> whileOn() {
        var presses = new ArrayList<Press>();
        Stream.of("strand", "scalp", "rinse")
                .sorted(Comparator.comparing(this::urgency)
                        .reversed()
                        .thenComparing(press ->
                                !(press.equals("rinse") && urgency(press).rings())))
                .map(press -> press.equals("rinse") ? rinse() : open(press))
                .forEach(presses::add);
        if (head.visit.heat().isPresent()) {
            presses.add(send("heat-off"));
        }
        return presses;
    }

    /** The questions come before the first bowl, a bowl before the brush, and after a rinse a look at what came of it. */
    private List<Press> whileNothingIsOn() {
        var presses = new ArrayList<Press>();
        if (!head.visit.gate().isComplete()) {
            presses.add(open("gate"));
        }
        presses.add(head.isBowlWaiting() ? open("put-on") : mix());
        if (head.visit.lastOff().isPresent()) {
            presses.addAll(0, afterRinse());
        } else {
            presses.add(open("already-on"));
        }
        return presses;
    }

    private List<Press> afterRinse() {
        var presses = new ArrayList<Press>();
        if (head.visit.round().towelDriedAt() == null) {
            presses.add(send("towel-dried"));
        }
        if (head.visit.round().lift() == null) {
            presses.add(open("lift"));
        }
        presses.add(open("scalp"));
        return presses;
    }

    /** Water is on, on everything, now: one press. Where else, or on which of it, is asked under "more". */
    Press rinse() {
        var basin = basins.freeFor(head.visit);
        var hint = basin.map(at -> moment.say("press.rinse.at", at.letter())).orElse(moment.say("press.rinse.hint"));
        return basin.map(at ->
                        Press.sends(moment.say("press.rinse"), hint, base + "/rinse", new Hidden("basin", at.letter())))
                .orElseGet(() -> Press.sends(moment.say("press.rinse"), hint, base + "/rinse"));
    }

    private Press mix() {
        return Press.opens(
                moment.say("press.mix"),
                moment.say("press.mix.hint"),
                "/bowls/mix?visit=" + head.visit.id().value());
    }

    private Press send(String press) {
        var key = "press." + press.replace('-', '_');
        return Press.sends(moment.say(key), moment.say(key + ".hint"), base + "/" + press);
    }

    /** The press that a list of heads shows first. */
    List<Press> main() {
        return List.of(all().get(0));
    }

    /** How loudly something asks for this press; the loudest comes first. */
    private Urgency urgency(String press) {
        return moment.ringing(head.visit).stream()
                .filter(bell -> press.equals(answer(bell.kind())))
                .map(head.bells::urgency)
                .max(Comparator.naturalOrder())
                .orElse(Urgency.CALM);
    }

    private static String answer(BellKind kind) {
        return switch (kind) {
            case RINSE, BURNING, HOT_FOIL -> "rinse";
            case SCALP_CHECK, SCALP_AFTER_RINSE, TINGLING -> "scalp";
            case STRAND_CHECK, READY -> "strand";
            default -> "";
        };
    }

    private Press open(String press) {
        var key = "press." + press.replace('-', '_');
        return Press.opens(moment.say(key), moment.say(key + ".hint"), base + "/" + press);
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
