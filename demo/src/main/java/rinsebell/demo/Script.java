package rinsebell.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger;
import rinsebell.floor.salon.StaffId;

/**
 * A salon day as a list of presses at their times. Each is decided on the floor that those before it made, so what the
 * script tells is a day that could have been pressed in.
 */
final class Script {
    private final Instant now;
    private final List<Line> lines = new ArrayList<>();
    private final List<Ledger.Entry> entries = new ArrayList<>();
    private Floor floor = Floor.EMPTY;

    /** @param now the instant that the day has come to when it has been told */
    Script(Instant now) {
        this.now = now;
    }

    private record Line(Instant at, Runnable step) {}

    /** Something happens so long ago; of two at once the one that was written first. */
    void at(Duration ago, Runnable step) {
        lines.add(new Line(now.minus(ago), step));
    }

    /** Tells everything in the order in which it happened. */
    void play() {
        lines.sort(Comparator.comparing(Line::at));
        lines.forEach(line -> line.step.run());
        lines.clear();
    }

    /**
     * Presses, as a plan.
     *
     * @return the number of the first fact that came of it
     * @throws IllegalStateException when the floor refuses: the script breaks a rule of the trade
     */
    long press(Command command, Duration ago, @Nullable StaffId by) {
        var asked = Asked.at(now.minus(ago)).by(by);
        if (command.decide(floor, asked) instanceof Decision.Accepted accepted) {
            return write(accepted.drafts(), asked);
        }
        throw new IllegalStateException("refused " + ago + " ago: " + command + " " + command.decide(floor, asked));
    }

    private long write(List<Draft> drafts, Asked asked) {
        var first = floor.lastSeq() + 1;
        var facts = new ArrayList<Fact>();
        Map<Long, String> texts = new TreeMap<>();
        for (var draft : drafts) {
            var seq = first + facts.size();
            facts.add(draft.numbered(seq, asked));
            if (draft.text() != null) {
                texts.put(seq, draft.text());
            }
        }
        entries.add(new Ledger.Entry("saturday-" + first, "demo", "saturday", outcome(facts), facts, texts));
        floor = floor.with(facts);
        return first;
    }

    private static String outcome(List<Fact> facts) {
        var numbers = facts.stream().map(fact -> String.valueOf(fact.seq())).collect(Collectors.joining(","));
        return "{\"accepted\":true,\"facts\":[" + numbers + "],\"reasons\":[],\"canBeFact\":false}";
    }

    Floor floor() {
        return floor;
    }

    List<Ledger.Entry> entries() {
        return List.copyOf(entries);
    }
}
