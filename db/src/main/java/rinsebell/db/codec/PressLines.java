package rinsebell.db.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger.Entry;

/**
 * A press as the lines it has in the journal: one for each fact, the first of them with the press itself. Texts are not
 * among them, since a journal can't forget.
 */
public final class PressLines {

    private PressLines() {}

    /** @param entry a press that wrote facts */
    public static List<String> of(Entry entry) {
        List<String> lines = new ArrayList<>();
        for (Fact fact : entry.facts()) {
            ObjectNode line = Json.object();
            FactRow.of(fact).write(line);
            if (lines.isEmpty()) {
                new Writing(line).object("press", entry, PressLines::writePress);
            }
            lines.add(Json.line(line));
        }
        return lines;
    }

    /**
     * The press that was written in these lines, without its texts.
     *
     * @throws UnreadableFact if this version of the program does not know how to read them
     */
    public static Entry read(List<String> lines) {
        List<Reading> objects = lines.stream()
                .map(line -> new Reading("line", Json.parse(line)))
                .toList();
        List<Fact> facts =
                objects.stream().map(FactRow::read).map(FactRow::fact).toList();
        return objects.get(0).object("press", in -> readPress(in, facts));
    }

    private static void writePress(Entry entry, Writing out) {
        out.text("id", entry.id())
                .text("device", entry.device())
                .text("payload_hash", entry.payloadHash())
                .text("outcome", entry.outcome());
    }

    private static Entry readPress(Reading in, List<Fact> facts) {
        return new Entry(
                in.text("id"), in.text("device"), in.text("payload_hash"), in.text("outcome"), facts, Map.of());
    }
}
