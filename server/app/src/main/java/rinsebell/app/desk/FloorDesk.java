package rinsebell.app.desk;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger;
import rinsebell.floor.Ledger.NotSaved;
import rinsebell.floor.TextId;

/**
 * The single writer. Waiting presses are decided in turn on a provisional floor, made durable together with one force
 * to disk; then the floor is swapped, then they are answered and the screens hear of it. If nothing could be saved the
 * floor stays and they are told so. If nobody can tell what was saved, nothing is answered and the process stops.
 */
public final class FloorDesk implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(FloorDesk.class);

    private static final int MOST_IN_A_BATCH = 256;
    private static final long LOOK_AGAIN_MILLIS = 100;

    private final Ledger ledger;
    private final PressMemory memory;
    private final Wording wording;
    private final Consumer<List<Fact>> saved;
    private final Consumer<Snapshot> published;
    private final Runnable stop;
    private final Line line = new Line();
    private final AtomicBoolean open = new AtomicBoolean(true);
    private final Thread writer;
    private volatile Snapshot snapshot;

    /**
     * What the desk works with.
     *
     * @param ledger where presses are made durable
     * @param memory of presses answered before
     * @param wording for reasons
     * @param saved told of facts that have just become durable, before anybody sees the floor with them
     * @param published told of every new floor, one after the other: it must only leave word
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
        this(tools, loaded);
        this.writer.start();
    }

    /** A desk at which nobody works by itself, for a world with a time of its own: see {@link #takeTurn}. */
    public static FloorDesk unattended(Snapshot loaded, Tools tools) {
        return new FloorDesk(tools, loaded);
    }

    private FloorDesk(Tools tools, Snapshot loaded) {
        this.ledger = tools.ledger();
        this.memory = tools.memory();
        this.wording = tools.wording();
        this.saved = tools.saved();
        this.published = tools.published();
        this.stop = tools.stop();
        this.snapshot = loaded;
        this.writer = new Thread(this::work, "floor-desk");
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
        try {
            return memory.find(id).map(known -> known.again(payloadHash, snapshot.floor()));
        } catch (PressMemory.OutOfReach e) {
            LOG.error("nobody can say what a press was answered before: {}", e.getMessage());
            return Optional.empty();
        }
    }

    /** Hands a press in; its answer comes when it is durable. */
    public CompletableFuture<Answer> press(Press press) {
        var waiting = Line.Waiting.of(press);
        if (!takes(waiting)) {
            waiting.answer().complete(turnedAway(press));
        }
        return waiting.answer();
    }

    /**
     * Hands a press in and waits for its answer. Past the patience it is taken back, so that it is surely not saved; if
     * it is being written already, nobody knows yet.
     */
    public Answer answer(Press press, Duration patience) {
        var waiting = Line.Waiting.of(press);
        if (takes(waiting)) {
            var answer = waiting.within(patience);
            if (answer.isPresent()) {
                return answer.get();
            }
            line.leave(waiting);
        }
        return turnedAway(press);
    }

    /** What can be said for sure of a press that does not stand in line. Burning rings all the same. */
    public Answer turnedAway(Press press) {
        // Asked before anything is remembered: whatever leaves the line in between is found in the memory.
        var underWay = line.holds(press.id());
        var batch = new Batch(snapshot, memory, wording);
        var answer = decided(batch, press);
        ring(Alarms.among(batch.entries()));
        ring(batch.lost());
        var open = batch.holds(press.id()) || answer instanceof Answer.NotSaved;
        return underWay && open ? new Answer.NotKnown() : unsaved(batch, press, answer);
    }

    /** Closing waits for a press that is just being handed in, so that none is left without an answer. */
    private synchronized boolean takes(Line.Waiting waiting) {
        return open.get() && line.join(waiting);
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
            while (open.get() || !line.isEmpty()) {
                decide(line.next(LOOK_AGAIN_MILLIS, MOST_IN_A_BATCH));
            }
        } catch (InterruptedException | RuntimeException | Error e) {
            LOG.error("the desk can't go on: stopping", e);
            open.set(false);
            stop.run();
        }
    }

    /**
     * Decides, saves, shows and answers what waits, at an unattended desk. A failure that leaves it open what is on disk
     * goes up: nothing is answered then, and the desk is of no more use.
     */
    public void takeTurn() {
        decide(line.waiting(MOST_IN_A_BATCH));
    }

    /** A failure that leaves it open what is on disk goes up and ends the desk: nothing is answered then. */
    private void decide(List<Line.Waiting> waiting) {
        var batch = new Batch(snapshot, memory, wording);
        var answers = waiting.stream().map(one -> decided(batch, one.press())).toList();
        ring(batch.lost());
        var saved = savedAndShown(batch);
        for (var i = 0; i < waiting.size(); i++) {
            var one = waiting.get(i);
            line.answer(one, saved ? answers.get(i) : unsaved(batch, one.press(), answers.get(i)));
        }
    }

    /** Saves and shows; a batch of which nothing could be saved leaves the floor as it was. */
    private boolean savedAndShown(Batch batch) {
        try {
            save(batch);
            show(batch);
            return true;
        } catch (NotSaved e) {
            LOG.error(
                    "{} presses could not be saved; the floor is as it was",
                    batch.entries().size(),
                    e);
            ring(Alarms.among(batch.entries()));
            return false;
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

    /** Shows texts no longer that were erased. */
    public synchronized void forget(Set<TextId> texts) {
        publish(snapshot.without(texts));
    }

    /** Others than the writer ring too, when it hangs on a disk. */
    private synchronized void ring(List<Fact> alarms) {
        if (!alarms.isEmpty()) {
            publish(snapshot.ringing(alarms));
        }
    }

    /** What a press is answered whose batch was not saved; what stood before stands, and a bug is a bug. */
    private Answer unsaved(Batch batch, Press press, Answer answer) {
        if (batch.holds(press.id())) {
            return new Answer.NotSaved(batch.isAlarm(press.id()));
        }
        return answer instanceof Answer.Decided decided
                ? new Answer.Decided(decided.outcome(), snapshot.floor())
                : answer;
    }

    private void show(Batch batch) {
        batch.remember();
        if (batch.hasFacts()) {
            saved.accept(batch.facts());
            swap(batch);
        }
    }

    private synchronized void swap(Batch batch) {
        publish(batch.after(snapshot));
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
