package rinsebell.db;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger.Entry;
import rinsebell.floor.Ledger.NotSaved;
import rinsebell.floor.visit.StayEvent;

/** Facts as presses: one each, named after the fact; who arrives has a label. */
final class Told {

    private Told() {}

    static Entry press(Fact... facts) {
        Map<Long, String> texts = new HashMap<>();
        for (Fact fact : facts) {
            if (fact.event() instanceof StayEvent.Arrived) {
                texts.put(fact.seq(), label(fact.seq()));
            }
        }
        String id = "press-" + facts[0].seq();
        return new Entry(id, "tablet", "hash of " + id, "{\"said\":\"" + id + "\"}", List.of(facts), texts);
    }

    static Entry refusal(String id) {
        return new Entry(id, "tablet", "hash of " + id, "{\"refused\":true}", List.of(), Map.of());
    }

    static String label(long seq) {
        return "Größe \"" + seq + "\"\n☂";
    }

    /** Saves, one press a fact, whatever of these the store does not have yet. */
    static void save(SalonStore store, List<Fact> facts) throws NotSaved {
        for (Fact fact : facts.subList(Math.toIntExact(store.lastSeq()), facts.size())) {
            store.append(List.of(press(fact)));
        }
    }
}
