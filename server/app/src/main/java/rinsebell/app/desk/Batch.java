package rinsebell.app.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger;
import rinsebell.floor.Reason;
import rinsebell.floor.TextId;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.Acknowledge;

/** Presses that are decided one after the other on a provisional floor, and made durable together. */
final class Batch {
    private static final Logger LOG = LoggerFactory.getLogger(Batch.class);
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Snapshot before;
    private final PressMemory memory;
    private final Wording wording;
    private final List<Ledger.Entry> entries = new ArrayList<>();
    private final Map<String, KnownPress> answered = new LinkedHashMap<>();
    private final Map<TextId, String> texts = new HashMap<>();
    private final List<Fact> lost = new ArrayList<>();
    private PressMemory.@Nullable OutOfReach away;
    private Floor floor;

    Batch(Snapshot before, PressMemory memory, Wording wording) {
        this.before = before;
        this.memory = memory;
        this.wording = wording;
        this.floor = before.floor();
    }

    Answer decide(Press press) {
        Optional<KnownPress> known;
        try {
            known = known(press.id());
        } catch (PressMemory.OutOfReach e) {
            LOG.error("a press can't be taken, since nobody can say whether it came before: {}", e.getMessage());
            away = e;
            return lost(press);
        }
        return known.map(before -> before.again(press.payloadHash(), floor)).orElseGet(() -> decideNew(press));
    }

    /** A memory that can't be asked lets whoever asks wait, so a batch asks it once. */
    private Optional<KnownPress> known(String id) {
        if (away != null) {
            throw away;
        }
        return Optional.ofNullable(answered.get(id)).or(() -> memory.find(id));
    }

    /** It may have counted before, and counting twice is worse than not being saved; but burning rings. */
    private Answer lost(Press sent) {
        var press = sent.possibleOn(seenBy(sent.command()));
        var alarms =
                press.command().decide(seenBy(press.command()), press.asked()) instanceof Decision.Accepted accepted
                        ? accepted.drafts().stream()
                                .map(draft -> draft.numbered(floor.lastSeq() + 1, press.asked()))
                                .filter(Alarms::isAlarm)
                                .toList()
                        : List.<Fact>of();
        lost.addAll(alarms);
        return new Answer.NotSaved(!alarms.isEmpty());
    }

    private Answer decideNew(Press sent) {
        var press = sent.possibleOn(seenBy(sent.command()));
        var decision = press.command().decide(seenBy(press.command()), press.asked());
        return decision instanceof Decision.Accepted accepted
                ? accept(press, accepted)
                : refuse(press, (Decision.Refused) decision);
    }

    /** Whoever has heard a bell that is not on disk speaks of what no fact tells. */
    private Floor seenBy(Command command) {
        return command instanceof Acknowledge heard && !heard.bell().isSaved() ? floor.with(before.alarms()) : floor;
    }

    private Answer accept(Press press, Decision.Accepted accepted) {
        var facts = new ArrayList<Fact>();
        var said = new HashMap<Long, String>();
        for (var draft : accepted.drafts()) {
            var fact = draft.numbered(floor.lastSeq() + facts.size() + 1, press.asked());
            facts.add(fact);
            if (draft.text() != null) {
                said.put(fact.seq(), draft.text());
            }
        }
        var next = floor.with(facts);
        var numbers = facts.stream().map(Fact::seq).toList();
        var outcome = new Outcome(true, numbers, say(accepted.cautions(), next), false);
        // Whatever can fail has been done: from here on the press is part of the batch, whole.
        floor = next;
        said.forEach((seq, text) -> texts.put(new TextId(seq), text));
        return keep(press, outcome, facts, said);
    }

    private Answer refuse(Press press, Decision.Refused refused) {
        var outcome = new Outcome(false, List.of(), say(refused.reasons(), floor), refused.canBeFact());
        return keep(press, outcome, List.of(), Map.of());
    }

    private Answer keep(Press press, Outcome outcome, List<Fact> facts, Map<Long, String> said) {
        answered.put(press.id(), new KnownPress(press.payloadHash(), outcome));
        entries.add(new Ledger.Entry(press.id(), press.device(), press.payloadHash(), written(outcome), facts, said));
        return new Answer.Decided(outcome, floor);
    }

    private List<Outcome.Said> say(List<Reason> reasons, Floor on) {
        return reasons.stream()
                .map(reason -> new Outcome.Said(
                        reason.code().name(), reason.code().basis().name(), wording.say(reason, on, before.texts())))
                .toList();
    }

    private static String written(Outcome outcome) {
        try {
            return JSON.writeValueAsString(outcome);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an outcome can always be written", e);
        }
    }

    List<Ledger.Entry> entries() {
        return List.copyOf(entries);
    }

    /** The alarms among presses that could not even be tried to be saved. */
    List<Fact> lost() {
        return List.copyOf(lost);
    }

    /** Whether a press was decided here, rather than answered from before. */
    boolean holds(String id) {
        return answered.containsKey(id);
    }

    /** Whether a press that was decided here says that somebody is being hurt. */
    boolean isAlarm(String id) {
        return entries.stream()
                .filter(entry -> entry.id().equals(id))
                .flatMap(entry -> entry.facts().stream())
                .anyMatch(Alarms::isAlarm);
    }

    boolean hasFacts() {
        return entries.stream().anyMatch(entry -> !entry.facts().isEmpty());
    }

    /** Every fact of the batch, by number. */
    List<Fact> facts() {
        return entries.stream().flatMap(entry -> entry.facts().stream()).toList();
    }

    /**
     * The next snapshot. At a day's end the live floor is cut down to what the new day begins with.
     *
     * @param current of the floor that this batch began with, and of whatever has begun to ring since
     */
    Snapshot after(Snapshot current) {
        var next = current.moved(shift()).with(floor, texts).returned(current, facts());
        return facts().stream()
                .filter(fact -> fact.event() instanceof DayEvent.DayEnded)
                .reduce(next, (turned, end) -> turned.turned(end.recorded()), (one, other) -> other);
    }

    /** How far the clock was put right. */
    private Duration shift() {
        return facts().stream()
                .map(Fact::event)
                .filter(DayEvent.ClockShifted.class::isInstance)
                .map(event -> ((DayEvent.ClockShifted) event).by())
                .reduce(Duration.ZERO, Duration::plus);
    }

    void remember() {
        answered.forEach(memory::keep);
    }
}
