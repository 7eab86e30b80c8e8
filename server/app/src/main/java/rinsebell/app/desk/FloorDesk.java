package rinsebell.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger;
import rinsebell.floor.Ledger.NotSaved;

/**
 * The single writer. Waiting presses are decided in turn on a provisional floor, made durable together with one force
 * to disk; then the floor is swapped, then they are answered and the screens hear of it. If nothing could be saved the
 * floor stays and they are told so. If nobody can tell what was saved, nothing is answered and the process stops.
 */
public final class FloorDesk implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(FloorDesk.class);

    /** More presses than hands: past this many waiting ones a press is answered "not saved" at once. */
    private static final int MOST_WAITING = 10_000;

    private static final int MOST_IN_A_BATCH = 256;
    private static final long LOOK_AGAIN_MILLIS = 100;

    private final Ledger ledger;
    private final PressMemory memory;
    private final Wording wording;
    private final Consumer<List<Fact>> saved;
    private final Consumer<Snapshot> published;
    private final Runnable stop;
    private final BlockingQueue<Waiting> queue = new LinkedBlockingQueue<>(MOST_WAITING);
    private final AtomicBoolean open = new AtomicBoolean(true);
    private final Thread writer;
    private volatile Snapshot snapshot;

    private record Waiting(Press press, CompletableFuture<Answer> answer) {}

    /**
     * What the desk works with.
     *
     * @param ledger where presses are made durable
     * @param memory of presses answered before
     * @param wording for reasons
     * @param saved told of facts that have just become durable, before anybody sees the floor with them
     * @param published told of every new floor, on the writer's thread: it must only leave word
     * @param stop ends the process, when it can't be told what is on disk
     */
    public record Tools(
            Ledger ledger,
            PressMemory memory,
            Wording wording,
            Consumer<List<Fact>> saved,
            Consumer<Snapshot> published,
            Runnable stop) {}

    /** A desk on the floor as it was loaded; it takes presses from now on. */
    public FloorDesk(Snapshot loaded, Tools tools) {
        this.ledger = tools.ledger();
        this.memory = tools.memory();
        this.wording = tools.wording();
        this.saved = tools.saved();
        this.published = tools.published();
        this.stop = tools.stop();
        this.snapshot = loaded;
        this.writer = new Thread(this::work, "floor-desk");
        this.writer.start();
    }

    /** The floor as everybody sees it now. */
    public Snapshot snapshot() {
        return snapshot;
    }

    /**
     * What a press was answered when it came before. The floor has moved on since, so what was typed then may make no
     * sense on it now, and yet the answer stands.
     */
    public Optional<Answer> answered(String id, String payloadHash) {
        return memory.find(id).map(known -> known.again(payloadHash, snapshot.floor()));
    }

    /** Hands a press in; its answer comes when it is durable. */
    public CompletableFuture<Answer> press(Press press) {
        var waiting = new Waiting(press, new CompletableFuture<>());
        if (!takes(waiting)) {
            waiting.answer.complete(new Answer.NotSaved(false));
        }
        return waiting.answer;
    }

    /** Closing waits for a press that is just being handed in, so that none is left without an answer. */
    private synchronized boolean takes(Waiting waiting) {
        return open.get() && queue.offer(waiting);
    }

    private synchronized void shut() {
        open.set(false);
    }

    /**
     * Presses in turn until the desk closes. It is never interrupted: that would close the file under a write, and then
     * nobody could tell what is on disk.
     */
    private void work() {
        try {
            while (open.get() || !queue.isEmpty()) {
                var first = queue.poll(LOOK_AGAIN_MILLIS, TimeUnit.MILLISECONDS);
                if (first != null) {
                    decide(batchFrom(first));
                }
            }
        } catch (InterruptedException | RuntimeException | Error e) {
            LOG.error("the desk can't go on: stopping", e);
            open.set(false);
            stop.run();
        }
    }

    private List<Waiting> batchFrom(Waiting first) {
        var batch = new ArrayList<Waiting>();
        batch.add(first);
        queue.drainTo(batch, MOST_IN_A_BATCH - 1);
        return batch;
    }

    /** A failure that leaves it open what is on disk goes up and ends the desk: nothing is answered then. */
    private void decide(List<Waiting> waiting) {
        var batch = new Batch(snapshot, memory, wording);
        var answers = waiting.stream().map(one -> decided(batch, one.press)).toList();
        try {
            save(batch);
        } catch (NotSaved e) {
            LOG.error("{} presses could not be saved; the floor is as it was", waiting.size(), e);
            ring(Alarms.among(batch.entries()));
            waiting.forEach(one -> one.answer.complete(notSaved(batch, one.press)));
            return;
        }
        show(batch);
        for (var i = 0; i < waiting.size(); i++) {
            waiting.get(i).answer.complete(answers.get(i));
        }
    }

    private void save(Batch batch) throws NotSaved {
        if (!batch.entries().isEmpty()) {
            ledger.append(batch.entries());
        }
    }

    /** A bug in one press must not take the others, or the desk, with it. */
    private static Answer decided(Batch batch, Press press) {
        try {
            return batch.decide(press);
        } catch (RuntimeException e) {
            LOG.error(
                    "a press could not be decided: {}",
                    press.command().getClass().getSimpleName(),
                    e);
            return new Answer.Bug();
        }
    }

    private void ring(List<Fact> alarms) {
        if (!alarms.isEmpty()) {
            publish(snapshot.ringing(alarms));
        }
    }

    private static Answer notSaved(Batch batch, Press press) {
        return new Answer.NotSaved(batch.entries().stream()
                .filter(entry -> entry.id().equals(press.id()))
                .flatMap(entry -> entry.facts().stream())
                .anyMatch(Alarms::isAlarm));
    }

    private void show(Batch batch) {
        batch.remember();
        if (batch.hasFacts()) {
            saved.accept(batch.facts());
            publish(batch.snapshot());
        }
    }

    private void publish(Snapshot next) {
        snapshot = next;
        try {
            published.accept(next);
        } catch (RuntimeException e) {
            LOG.error("the screens did not hear of the new floor", e);
        }
    }

    /** Takes no more presses, and returns when those that wait are answered. */
    @Override
    public void close() {
        shut();
        try {
            writer.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
