package rinsebell.floor.simulation;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.bell.Bell;

/** What happened in salon days, by name: a simulation that never rings a bell proves nothing of it. */
public final class Tally {
    private final Set<String> happened = new TreeSet<>();

    void add(Command command, Decision decision) {
        if (decision instanceof Decision.Accepted accepted) {
            happened.add("accepted " + command.getClass().getSimpleName());
            accepted.drafts()
                    .forEach(draft -> happened.add(draft.event().getClass().getSimpleName()));
            accepted.cautions().forEach(reason -> happened.add(reason.code().name()));
        } else if (decision instanceof Decision.Refused refused) {
            happened.add("refused " + command.getClass().getSimpleName());
            refused.reasons().forEach(reason -> happened.add(reason.code().name()));
        }
    }

    void add(List<Bell> bells, Instant now) {
        bells.stream()
                .flatMap(bell -> bell.at(now).stream().map(stage -> bell.kind() + " " + stage.priority()))
                .forEach(happened::add);
    }

    static Set<String> all(Stream<Tally> tallies) {
        var found = new TreeSet<String>();
        tallies.forEach(tally -> found.addAll(tally.happened));
        return found;
    }
}
