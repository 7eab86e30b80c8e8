package rinsebell.app.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Returned;

/**
 * The floor as everybody sees it, with what goes along.
 *
 * @param floor the facts' fold
 * @param texts labels, names and notes by the fact they came with
 * @param bells every bell of this floor, those of the alarms among them
 * @param returned bells of today that rang and are gone, unseen then; some may have been seen or have rung since
 * @param alarms burning that could not be saved; no part of the floor, but it rings
 */
public record Snapshot(
        Floor floor, Map<TextId, String> texts, List<Bell> bells, List<Returned> returned, List<Fact> alarms) {
    public Snapshot {
        bells = List.copyOf(bells);
        returned = List.copyOf(returned);
        alarms = List.copyOf(alarms);
    }

    public static Snapshot of(Floor floor, Map<TextId, String> texts) {
        var newest = floor.facts().stream().map(Fact::recorded).max(Instant::compareTo);
        var returned = newest.map(now -> Returned.of(floor, now)).orElse(List.of());
        return new Snapshot(floor, Collections.unmodifiableMap(texts), floor.bells(), returned, List.of());
    }

    Snapshot with(Floor next, Map<TextId, String> more) {
        var bells = next.with(alarms).bells();
        var left = Alarms.left(alarms, next, bells);
        var ringing = left.equals(alarms) ? bells : next.with(left).bells();
        return new Snapshot(next, together(texts, more), ringing, returned, left);
    }

    /** The same with the bells that these facts, which led from the floor before to this one, made go unseen. */
    Snapshot returned(Snapshot before, List<Fact> facts) {
        var corrections = facts.stream().filter(Returned::canReturn).toList();
        if (corrections.isEmpty()) {
            return this;
        }
        var last = corrections.get(corrections.size() - 1);
        // Where something was done as well, only the facts one by one tell what went by which.
        var gone = corrections.size() == facts.size()
                ? Returned.by(last, before.bells, bells)
                : Returned.of(floor, last.recorded());
        return new Snapshot(floor, texts, bells, Returned.and(returned, gone), alarms);
    }

    /** The same floor with alarms that ring although they are not on disk; some may have been saved meanwhile. */
    Snapshot ringing(List<Fact> more) {
        return new Snapshot(floor, texts, bells, returned, Alarms.together(alarms, more)).with(floor, Map.of());
    }

    /** No fact moves what is not on disk, so it is moved here when the clock is put right. */
    Snapshot moved(Duration by) {
        return by.isZero() ? this : new Snapshot(floor, texts, bells, returned, Alarms.moved(alarms, by));
    }

    /** The same floor when these texts were erased. */
    Snapshot without(Set<TextId> gone) {
        var left = new HashMap<>(texts);
        left.keySet().removeAll(gone);
        return new Snapshot(floor, Collections.unmodifiableMap(left), bells, returned, alarms);
    }

    /** What a new day begins with. */
    Snapshot turned(Instant now) {
        var next = floor.turned(now);
        var kept = next.facts().stream().map(fact -> new TextId(fact.seq())).collect(Collectors.toSet());
        var left = new HashMap<>(texts);
        left.keySet().retainAll(kept);
        return new Snapshot(
                next, Collections.unmodifiableMap(left), next.with(alarms).bells(), List.of(), alarms);
    }

    private static Map<TextId, String> together(Map<TextId, String> texts, Map<TextId, String> more) {
        if (more.isEmpty()) {
            return texts;
        }
        var all = new HashMap<>(texts);
        all.putAll(more);
        return Collections.unmodifiableMap(all);
    }

    /** The text of a fact; empty when it has none, or it was erased. */
    public String text(TextId id) {
        return texts.getOrDefault(id, "");
    }
}
