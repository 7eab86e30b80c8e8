package rinsebell.demo.turnaround;

import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Queue;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import rinsebell.floor.visit.VisitId;

/** Who goes to a basin when: by the floor's plan, once somebody has decided that what is on comes off. */
final class Basins {
    private final Book book;
    private final Agenda agenda;
    private final TreeSet<Integer> free = new TreeSet<>();
    private final Map<VisitId, Runnable> decided = new LinkedHashMap<>();
    private final Queue<IntConsumer> prepared = new ArrayDeque<>();
    private boolean looksAgain;

    Basins(Book book, Agenda agenda) {
        this.book = book;
        this.agenda = agenda;
        IntStream.rangeClosed(1, book.floor().salon().rooms().basins()).forEach(free::add);
    }

    /** @param begins what comes before the basin, when it is their turn */
    void wants(VisitId visit, Runnable begins) {
        decided.put(visit, begins);
        look();
    }

    /** Whose turn has come begins; who has to wait for it is looked at again in a minute. */
    private void look() {
        var now = agenda.now();
        for (var turn : book.floor().outlook(now).plan().turns()) {
            if (decided.containsKey(turn.visit()) && !turn.begin().isAfter(now)) {
                decided.remove(turn.visit()).run();
            }
        }
        if (!decided.isEmpty() && !looksAgain) {
            looksAgain = true;
            agenda.at(now.truncatedTo(ChronoUnit.MINUTES).plus(1, ChronoUnit.MINUTES), this::lookAgain);
        }
    }

    private void lookAgain() {
        looksAgain = false;
        look();
    }

    /** @param water told the basin as soon as one is free for them */
    void isPrepared(IntConsumer water) {
        prepared.add(water);
        fill();
    }

    void leaves(int basin) {
        free.add(basin);
        fill();
    }

    private void fill() {
        while (!free.isEmpty() && !prepared.isEmpty()) {
            prepared.remove().accept(free.pollFirst());
        }
    }
}
