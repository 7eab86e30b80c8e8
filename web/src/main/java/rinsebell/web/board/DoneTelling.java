package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rinsebell.floor.Correction;
import rinsebell.floor.Fact;
import rinsebell.web.view.Press;

/** Tells what was recorded just now, and what can be done about it: one press, undo after. */
public final class DoneTelling {
    private final Moment moment;

    public DoneTelling(Moment moment) {
        this.moment = moment;
    }

    /** In a few words with its clock time, such as "Last on 14:22". */
    public String text(Fact fact) {
        var at = moment.clock(fact.happened());
        if (fact.event() instanceof Correction.Withdrawn) {
            return moment.say("answer.undone");
        }
        if (fact.event() instanceof Correction.SetBack back) {
            return moment.say("answer.set_back", moment.clock(back.to()));
        }
        var key = "fact." + fact.event().getClass().getSimpleName().toLowerCase(Locale.ROOT);
        return moment.words().knows(key)
                ? moment.say("answer.done.what", capital(moment.say(key)), at)
                : moment.say("answer.done", at);
    }

    /** Undo, and another time where the fact may have one; a correction has neither. */
    public List<Press> presses(Fact fact) {
        if (fact.event() instanceof Correction) {
            return List.of();
        }
        var address = "/facts/" + fact.seq();
        var presses = new ArrayList<Press>();
        presses.add(Press.sends(moment.say("answer.undo"), "", address + "/withdraw"));
        if (!(fact.stream() instanceof rinsebell.floor.Stream.OfSalon)) {
            presses.add(Press.opens(moment.say("answer.change"), "", address + "/set-back"));
        }
        return presses;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.UK) + words.substring(1);
    }
}
