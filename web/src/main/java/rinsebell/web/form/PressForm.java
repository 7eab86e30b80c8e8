package rinsebell.web.form;

import java.util.function.Function;
import rinsebell.floor.Command;

/** Reads what was typed for one kind of press. */
public interface PressForm {
    /** Never throws for what was typed: whatever is wrong with it is told, all of it. */
    Reading read(Target target, Fields fields);

    /** @param asks builds the command; where an entry was wrong it gets a stand-in, and the command is dropped */
    static PressForm asking(Function<Entries, Command> asks) {
        return (target, fields) -> {
            var entries = new Entries(target, fields);
            return entries.reading(asks.apply(entries));
        };
    }
}
