package rinsebell.demo.turnaround;

import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import rinsebell.floor.visit.VisitId;

/** Who goes to a basin when: by the floor's plan, once somebody has decided that what is on comes off. */
final class Basins {
    private final Book book;
    private final Agenda agenda;
    private final TreeSet<Integer> free = new TreeSet<>();
    private final Map<VisitId, IntConsumer> decided = new LinkedHashMap<>();

    Basins(Book book, Agenda agenda) {
        this.book = book;
        this.agenda = agenda;
        IntStream.rangeClosed(1, book.floor().salon().rooms().basins()).forEach(free::add);
    }

    /** @param goes told the basin when it is their turn */
    void wants(VisitId visit, IntConsumer goes) {
        decided.put(visit, goes);
        look();
    }

    void leaves(int basin) {
        free.add(basin);
        look();
    }

    /** Whose turn has come begins; who has to wait for it is looked at again in a minute. */
    private void look() {
        if (decided.isEmpty()) {
            return;
        }
        var now = agenda.now();
        for (var turn : book.floor().outlook(now).plan().turns()) {
            var goes = decided.get(turn.visit());
            if (goes != null && !turn.begin().isAfter(now) && !free.isEmpty()) {
                decided.remove(turn.visit());
                goes.accept(take(turn.basin()));
            }
        }
        if (!decided.isEmpty() && !free.isEmpty()) {
            agenda.at(now.truncatedTo(ChronoUnit.MINUTES).plus(1, ChronoUnit.MINUTES), this::look);
        }
    }

    /** The one of the plan, or another if somebody is on the way to it. */
    private int take(int planned) {
        var basin = free.contains(planned) ? planned : free.first();
        free.remove(basin);
        return basin;
    }
}
