package rinsebell.db;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger.Entry;

/** Puts facts, which come by number, together to the presses that wrote them. */
final class PressedFacts {

    private final Consumer<Entry> taker;
    private final List<Row> press = new ArrayList<>();

    PressedFacts(Consumer<Entry> taker) {
        this.taker = taker;
    }

    record Row(Fact fact, String press, AnsweredPress answered) {}

    void take(Row row) {
        if (!press.isEmpty() && !press.get(0).press().equals(row.press())) {
            end();
        }
        press.add(row);
    }

    void end() {
        if (!press.isEmpty()) {
            Row first = press.get(0);
            taker.accept(new Entry(
                    first.press(),
                    first.answered().device(),
                    first.answered().payloadHash(),
                    first.answered().outcome(),
                    press.stream().map(Row::fact).toList(),
                    Map.of()));
            press.clear();
        }
    }
}
