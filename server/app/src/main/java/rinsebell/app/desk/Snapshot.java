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
import rinsebell.floor.bell.Bells;

/**
 * The floor as everybody sees it, with what goes along.
 *
 * @param floor the facts' fold
 * @param texts labels, names and notes by the fact they came with
 * @param bells every bell of this floor, those of the alarms among them
 * @param alarms burning that could not be saved; no part of the floor, but it rings
 */
public record Snapshot(Floor floor, Map<TextId, String> texts, List<Bell> bells, List<Fact> alarms) {
    public Snapshot {
        bells = List.copyOf(bells);
        alarms = List.copyOf(alarms);
    }

    public static Snapshot of(Floor floor, Map<TextId, String> texts) {
        return new Snapshot(floor, Collections.unmodifiableMap(texts), Bells.of(floor), List.of());
    }

    Snapshot with(Floor next, Map<TextId, String> more) {
        var bells = Bells.of(next.with(alarms));
        var left = Alarms.left(alarms, next, bells);
        return new Snapshot(next, together(texts, more), left.equals(alarms) ? bells : Bells.of(next.with(left)), left);
    }

    /** The same floor with alarms that ring although they are not on disk; some may have been saved meanwhile. */
    Snapshot ringing(List<Fact> more) {
        return new Snapshot(floor, texts, bells, Alarms.together(alarms, more)).with(floor, Map.of());
    }

    /** No fact moves what is not on disk, so it is moved here when the clock is put right. */
    Snapshot moved(Duration by) {
        return by.isZero() ? this : new Snapshot(floor, texts, bells, Alarms.moved(alarms, by));
    }

    /** The same floor when these texts were erased. */
    Snapshot without(Set<TextId> gone) {
        var left = new HashMap<>(texts);
        left.keySet().removeAll(gone);
        return new Snapshot(floor, Collections.unmodifiableMap(left), bells, alarms);
    }

    /** What a new day begins with. */
    Snapshot turned(Instant now) {
        var next = floor.turned(now);
        var kept = next.facts().stream().map(fact -> new TextId(fact.seq())).collect(Collectors.toSet());
        var left = new HashMap<>(texts);
        left.keySet().retainAll(kept);
        return new Snapshot(next, Collections.unmodifiableMap(left), Bells.of(next.with(alarms)), alarms);
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
