package rinsebell.demo.kill;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rinsebell.db.DataFolder;
import rinsebell.db.SalonStore;
import rinsebell.db.codec.PressLines;
import rinsebell.db.journal.Journal;
import rinsebell.db.journal.JournalMark;
import rinsebell.db.journal.JournalPress;
import rinsebell.db.journal.JournalReader;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger;

/** What a dead server has left on disk, set against what it had answered. */
final class Remains implements JournalReader {
    /** A press lies on its way, and a processor may be busy meanwhile: that comes on top of the age that it says. */
    private static final long MOST_OFF_MILLIS = 5_000;

    private final Map<String, Ledger.Entry> presses = new HashMap<>();
    private final List<Fact> facts = new ArrayList<>();

    private Remains() {}

    /**
     * Reads the chain of the journal from end to end, and checks that every fact that was answered is in it.
     *
     * @throws rinsebell.db.journal.JournalDamaged when the chain is broken
     */
    static void chain(Path data, Collection<Answered> answered) throws IOException {
        var lines = lines(data);
        answered.stream()
                .filter(one -> one.facts().stream().anyMatch(seq -> seq > lines))
                .forEach(lost -> fail("lost, the journal has only " + lines + " lines: " + lost));
    }

    /** How many facts a dead server has left. */
    static long lines(Path data) throws IOException {
        return Journal.verify(data.resolve("journal")).end().lines();
    }

    /** Opens the store and checks that journal, tables and answers say the same of every press. */
    static void whole(Path data, Collection<Answered> answered) throws IOException {
        var remains = new Remains();
        try (var folder = DataFolder.open(data);
                var store = SalonStore.open(folder, Instant.EPOCH)) {
            Journal.open(data.resolve("journal"), remains).close();
            answered.forEach(one -> remains.hold(one, store));
            remains.isLive(store.load(), answered);
        }
    }

    @Override
    public void press(JournalPress press, JournalMark after) {
        var entry = PressLines.read(press.payloads());
        facts.addAll(entry.facts());
        if (presses.put(entry.id(), entry) != null) {
            fail("the press " + entry.id() + " stands twice in the journal");
        }
    }

    /** The tables keep the facts of the live floor, and whatever a client pressed is on it. */
    private void isLive(List<Fact> live, Collection<Answered> answered) {
        var streams = live.stream().map(Fact::stream).collect(Collectors.toSet());
        var ofThese =
                facts.stream().filter(fact -> streams.contains(fact.stream())).toList();
        if (!live.equals(ofThese)) {
            fail("the tables and the journal say different things of the live floor");
        }
        answered.stream()
                .map(one -> presses.get(one.asked().id()))
                .filter(kept -> kept != null && !live.containsAll(kept.facts()))
                .forEach(lost -> fail("not on the live floor: " + lost));
    }

    private void hold(Answered answered, SalonStore store) {
        var id = answered.asked().id();
        if (store.press(id).isEmpty()) {
            fail("the answer is forgotten: " + answered);
        }
        var kept = presses.get(id);
        var written =
                kept == null ? List.of() : kept.facts().stream().map(Fact::seq).toList();
        if (!written.equals(answered.isAccepted() ? answered.facts() : List.of())) {
            fail("the journal has the facts " + written + " of " + answered);
        }
        if (kept != null && answered.asked().isQueued()) {
            happenedWhenPressed(kept, answered.asked().pressedMillis());
        }
    }

    /** However often it was sent, and however much later. */
    private static void happenedWhenPressed(Ledger.Entry kept, long pressedMillis) {
        for (var fact : kept.facts()) {
            var off = fact.happened().toEpochMilli() - pressedMillis;
            if (fact.unsure() || Math.abs(off) > MOST_OFF_MILLIS) {
                fail("happened " + off + " ms after it was pressed: " + fact);
            }
        }
    }

    private static void fail(String what) {
        throw new IllegalStateException(what);
    }
}
