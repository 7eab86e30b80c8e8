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

    HeadPresses(HeadTelling head) {
        this.head = head;
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
        if (head.timing.isAnythingOn()) {
            var looks = Stream.of("strand", "scalp", "rinse")
                    .sorted(Comparator.comparing(this::urgency).reversed());
            looks.map(this::open).forEach(all::add);
        } else {
            all.add(open("put-on"));
            all.add(open("already-on"));
            if (head.visit.lastOff().isPresent()) {
                all.add(open("lift"));
                all.add(open("scalp"));
            }
        }
        all.add(open("more"));
        all.set(0, all.get(0).as(Weight.MAIN));
        return all;
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

    List<Press> discomfort() {
        return List.of(
                complain(Complaint.Grade.TINGLING, Weight.CARE),
                complain(Complaint.Grade.BURNING, Weight.DANGER),
                complain(Complaint.Grade.HOT_FOIL, Weight.DANGER));
    }

    private Press complain(Complaint.Grade grade, Weight weight) {
        var key = Moment.key(grade);
        return Press.sends(
                        moment.say(key),
                        moment.say(key + ".hint"),
                        base + "/discomfort",
                        new Hidden("grade", grade.name()))
                .as(weight);
    }
}
