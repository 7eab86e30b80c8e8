package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rinsebell.floor.Correction;
import rinsebell.floor.Fact;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.WorkEvent;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Hidden;

/**
 * Tells what was recorded just now, and what can be done about it: one press, undo after.
 *
 * @param facts of one press, in their order
 */
public record DoneTelling(List<Fact> facts, Moment moment) {
    public DoneTelling {
        facts = List.copyOf(facts);
    }

    public static DoneTelling of(List<Long> numbers, Moment moment) {
        var facts = numbers.stream()
                .flatMap(seq -> moment.floor().fact(seq).stream())
                .toList();
        return new DoneTelling(facts, moment);
    }

    /** In a few words with its clock time, such as "Last on 14:22". */
    public String text() {
        return meant().map(this::text).orElse(moment.say("answer.done", moment.clock(moment.now())));
    }

    /** What somebody meant: on the way to a rinse a client moves, and what is already on was mixed. */
    private Optional<Fact> meant() {
        return facts.stream()
                .filter(fact -> !(fact.event() instanceof StayEvent.Moved || fact.event() instanceof DayEvent.Mixed))
                .findFirst()
                .or(() -> facts.stream().findFirst());
    }

    private String text(Fact fact) {
        if (fact.event() instanceof Correction.Withdrawn) {
            return moment.say("answer.undone");
        }
        if (fact.event() instanceof Correction.SetBack back) {
            return moment.say("answer.set_back", moment.clock(back.to()));
        }
        var clock = moment.clock(fact.happened());
        var at = fact.unsure() ? moment.say("answer.unsure.at", clock, moment.say("answer.unsure")) : clock;
        return what(fact)
                .map(words -> moment.say("answer.done.what", capital(words), at))
                .orElse(moment.say("answer.done", at));
    }

    private Optional<String> what(Fact fact) {
        if (fact.event() instanceof LookEvent.Complained complained) {
            return Optional.of(moment.say(complained.grade()));
        }
        if (fact.event() instanceof WorkEvent.TakenOff off) {
            return Optional.of(moment.say(off.how()));
        }
        return Optional.of("fact." + fact.event().getClass().getSimpleName().toLowerCase(Locale.ROOT))
                .filter(moment.words()::knows)
                .map(moment::say);
    }

    /** Undo, and another time where the fact may have one; a correction has neither. */
    public List<Press> presses() {
        return meant().filter(fact -> !(fact.event() instanceof Correction))
                .map(this::presses)
                .orElse(List.of());
    }

    private List<Press> presses(Fact meant) {
        var presses = new ArrayList<Press>();
        presses.add(undo(meant));
        if (!(meant.stream() instanceof Stream.OfSalon)) {
            presses.add(Press.opens(moment.say("answer.change"), "", "/facts/" + meant.seq() + "/set-back"));
        }
        return presses;
    }

    /** Where the whole press hangs on its first fact, all of it goes. */
    private Press undo(Fact meant) {
        var first = facts.get(0).seq();
        var others = facts.stream().map(Fact::seq).filter(seq -> seq != first).toList();
        var whole = moment.floor().hangingOn(first).containsAll(others);
        var along = whole ? others : List.<Long>of();
        return Press.sends(
                moment.say("answer.undo"),
                "",
                "/facts/" + (whole ? first : meant.seq()) + "/withdraw",
                along.stream()
                        .map(seq -> new Hidden("along", String.valueOf(seq)))
                        .toArray(Hidden[]::new));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.UK) + words.substring(1);
    }
}
