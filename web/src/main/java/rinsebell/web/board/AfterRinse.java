package rinsebell.web.board;

import java.util.Locale;
import java.util.Optional;
import rinsebell.floor.visit.Ending;

/** Tells a head with nothing on it any more when it came off, and what is left to do. */
final class AfterRinse {
    private final HeadTelling head;
    private final Moment moment;

    AfterRinse(HeadTelling head) {
        this.head = head;
        this.moment = head.moment;
    }

    /** Such as "Rinsed 18:04. Next: towel-dry"; empty while something is on, and before anything was. */
    Optional<String> words() {
        return head.timing.isAnythingOn()
                ? Optional.empty()
                : head.visit.lastOff().map(this::words);
    }

    private String words(Ending off) {
        var done = moment.say("after." + off.how().name().toLowerCase(Locale.ROOT), moment.clock(off.at()));
        var next = "after.next." + new HeadActs(head).main().name().toLowerCase(Locale.ROOT);
        return moment.words().knows(next) ? moment.say("after", done, moment.say(next)) : done;
    }
}
