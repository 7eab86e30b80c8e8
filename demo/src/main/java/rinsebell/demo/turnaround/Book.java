package rinsebell.demo.turnaround;

import java.time.Instant;
import java.util.ArrayList;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.command.EndDay;

/** The floor of a salon, and what is pressed on it. */
final class Book {
    private Floor floor = Floor.EMPTY;

    Floor floor() {
        return floor;
    }

    /**
     * Presses, as a plan.
     *
     * @return the number of the first fact that came of it
     * @throws IllegalStateException when the floor refuses: the simulation breaks a rule of the trade
     */
    long press(Command command, Instant at) {
        var asked = Asked.at(at);
        if (!(command.decide(floor, asked) instanceof Decision.Accepted accepted)) {
            throw new IllegalStateException("refused at " + at + ": " + command + " " + command.decide(floor, asked));
        }
        var first = floor.lastSeq() + 1;
        var facts = new ArrayList<Fact>();
        accepted.drafts().forEach(draft -> facts.add(draft.numbered(first + facts.size(), asked)));
        floor = floor.with(facts);
        return first;
    }

    /** A day has begun: the one before is over, and what it has shown is learned. */
    void turns(Instant at) {
        press(new EndDay(floor.salon().dayOf(at)), at);
        floor = floor.turned(at);
    }
}
