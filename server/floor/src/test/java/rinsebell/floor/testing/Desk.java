package rinsebell.floor.testing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;

/** Presses on a floor: what is accepted is numbered and folded in, as the process does it. Time by hand. */
public final class Desk {
    private Floor floor;
    private Instant now;

    public Desk(Floor floor, Instant now) {
        this.floor = floor;
        this.now = now;
    }

    /** A desk that goes on where a story stands. */
    public static Desk after(Story story) {
        return new Desk(story.floor(), story.now());
    }

    public Floor floor() {
        return floor;
    }

    public Instant now() {
        return now;
    }

    public Desk at(String clock) {
        return at(Saturday.at(clock));
    }

    public Desk at(Instant when) {
        now = when;
        return this;
    }

    /** The floor is another one: loaded again, or moved by hand. */
    public Desk stands(Floor other) {
        floor = other;
        return this;
    }

    public Decision plans(Command command) {
        return presses(command, Asked.at(now));
    }

    /** "Already done", now. */
    public Decision reports(Command command) {
        return presses(command, Asked.at(now).asFact());
    }

    /** "Already done", then. */
    public Decision reports(Command command, @Nullable Instant typed) {
        return presses(command, Asked.at(now).typed(typed).asFact());
    }

    public Decision presses(Command command, Asked sent) {
        var asked = sent.possible(command, floor);
        var decision = command.decide(floor, asked);
        if (decision instanceof Decision.Accepted accepted) {
            floor = floor.with(numbered(accepted, asked));
        }
        return decision;
    }

    /** The facts that a decision would write on this floor. */
    public List<Fact> numbered(Decision.Accepted accepted, Asked asked) {
        var facts = new ArrayList<Fact>();
        for (var draft : accepted.drafts()) {
            facts.add(draft.numbered(floor.lastSeq() + 1 + facts.size(), asked));
        }
        return facts;
    }

    /** The number of the newest fact. */
    public long last() {
        return floor.lastSeq();
    }

    /** A minute later, and so on. */
    public Desk after(Duration time) {
        now = now.plus(time);
        return this;
    }

    /** Why it was refused; nothing when it was not. */
    public static List<ReasonCode> refusal(Decision decision) {
        return decision instanceof Decision.Refused refused
                ? refused.reasons().stream().map(Reason::code).toList()
                : List.of();
    }

    /** What it was accepted with care about. */
    public static List<ReasonCode> cautions(Decision decision) {
        return decision instanceof Decision.Accepted accepted
                ? accepted.cautions().stream().map(Reason::code).toList()
                : List.of();
    }

    /** What it wrote down; nothing when it was refused. */
    public static List<Event> events(Decision decision) {
        return decision instanceof Decision.Accepted accepted
                ? accepted.drafts().stream().map(draft -> draft.event()).toList()
                : List.of();
    }

    public static boolean isAccepted(Decision decision) {
        return decision instanceof Decision.Accepted;
    }
}
