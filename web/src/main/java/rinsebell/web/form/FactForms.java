package rinsebell.web.form;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Optional;
import rinsebell.floor.Command;
import rinsebell.floor.Fact;
import rinsebell.floor.command.SetFactBack;
import rinsebell.floor.command.WithdrawFact;

/** Presses that set a fact right. */
final class FactForms {
    static final String FACTS = "facts";

    private FactForms() {}

    static void enter(Presses presses) {
        presses.enter(FACTS, "set-back", FactForms::setBack);
        presses.enter(FACTS, "withdraw", PressForm.asking(FactForms::withdraw));
    }

    /** The instant typed is where the fact goes; the correction itself is made now. */
    private static Reading setBack(Target target, Fields fields) {
        var entries = new Entries(target, fields);
        var to = entries.needed("at", to(entries), target.now());
        var reading = entries.reading(new SetFactBack(target.id(), to));
        return reading instanceof Reading.Read read
                ? new Reading.Read(read.command(), read.asked().typed(null))
                : reading;
    }

    /** At an instant, or so many minutes earlier than it stands now; a minus makes it later. */
    private static Optional<Instant> to(Entries entries) {
        var earlier = entries.whole("earlier", -EntryTimes.LONGEST_AGO_MINUTES, EntryTimes.LONGEST_AGO_MINUTES);
        return earlier.<Instant>flatMap(minutes -> entries.floor()
                        .standing(entries.id())
                        .map(Fact::happened)
                        .map(at -> at.minus(Duration.ofMinutes(minutes))))
                .or(() -> EntryTimes.typed(entries));
    }

    private static Command withdraw(Entries entries) {
        var along = new HashSet<>(entries.numbers("along"));
        if (entries.yesNo("all").orElse(false)) {
            along.addAll(entries.floor().hangingOn(entries.id()));
        }
        return new WithdrawFact(entries.id(), along);
    }
}
