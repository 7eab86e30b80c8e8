package rinsebell.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
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

    private final Ledger ledger;
    private final PressMemory memory;
    private final Wording wording;
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
     * @param published told of every new floor, on the writer's thread: it must only leave word
     * @param stop ends the process, when it can't be told what is on disk
     */
    public record Tools(
            Ledger ledger, PressMemory memory, Wording wording, Consumer<Snapshot> published, Runnable stop) {}

    /** A desk on the floor as it was loaded; it takes presses from now on. */
    public FloorDesk(Snapshot loaded, Tools tools) {
        this.ledger = tools.ledger();
        this.memory = tools.memory();
        this.wording = tools.wording();
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

    /** Hands a press in; its answer comes when it is durable. */
    public CompletableFuture<Answer> press(Press press) {
        var waiting = new Waiting(press, new CompletableFuture<>());
        if (!open.get() || !queue.offer(waiting)) {
            waiting.answer.complete(new Answer.NotSaved());
        }
        return waiting.answer;
    }

    private void work() {
        try {
            while (open.get()) {
                var batch = new ArrayList<Waiting>();
                batch.add(queue.take());
                queue.drainTo(batch, MOST_IN_A_BATCH - 1);
                decide(batch);
            }
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
        } finally {
            open.set(false);
            refuseWaiting();
        }
    }

    private void refuseWaiting() {
        var left = new ArrayList<Waiting>();
        queue.drainTo(left);
        left.forEach(waiting -> waiting.answer.complete(new Answer.NotSaved()));
    }

    private void decide(List<Waiting> waiting) {
        var batch = new Batch(snapshot, memory, wording);
        var answers = new ArrayList<Answer>();
        for (var one : waiting) {
            answers.add(decided(batch, one.press));
        }
        try {
            if (!batch.entries().isEmpty()) {
                ledger.append(batch.entries());
            }
        } catch (NotSaved e) {
            LOG.error(
                    "{} presses could not be saved; the floor is as it was",
                    batch.entries().size(),
                    e);
            waiting.forEach(one -> one.answer.complete(new Answer.NotSaved()));
            return;
        } catch (RuntimeException e) {
            LOG.error("it can't be told what is on disk: stopping", e);
            open.set(false);
            stop.run();
            return;
        }
        show(batch);
        for (var i = 0; i < waiting.size(); i++) {
            waiting.get(i).answer.complete(answers.get(i));
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
            return new Answer.NotSaved();
        }
    }

    private void show(Batch batch) {
        batch.remember();
        if (batch.hasFacts()) {
            snapshot = batch.snapshot();
            published.accept(snapshot);
        }
    }

    /** Decides no more presses; those still waiting are answered "not saved". */
    @Override
    public void close() {
        open.set(false);
        writer.interrupt();
    }
}
