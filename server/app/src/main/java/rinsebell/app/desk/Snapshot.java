package rinsebell.app.desk;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Bells;

/**
 * The floor as everybody sees it, with what goes along.
 *
 * @param floor the facts' fold
 * @param texts labels, names and notes by the fact they came with
 * @param bells every bell of this floor
 */
public record Snapshot(Floor floor, Map<TextId, String> texts, List<Bell> bells) {
    public static Snapshot of(Floor floor, Map<TextId, String> texts) {
        return new Snapshot(floor, Collections.unmodifiableMap(texts), Bells.of(floor));
    }

    Snapshot with(Floor next, Map<TextId, String> more) {
        if (more.isEmpty()) {
            return new Snapshot(next, texts, Bells.of(next));
        }
        var all = new HashMap<>(texts);
        all.putAll(more);
        return of(next, all);
    }

    /** The text of a fact; empty when it has none, or it was erased. */
    public String text(TextId id) {
        return texts.getOrDefault(id, "");
    }
}
