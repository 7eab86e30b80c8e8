package rinsebell.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import rinsebell.floor.Fact;
import rinsebell.floor.Ledger;

/** A ledger whose disk is full, breaks or is slow when a test says so: what a real disk can't be asked to do. */
public final class LedgerByHand implements Ledger {

    private enum Disk {
        FINE,
        FULL,
        BROKEN
    }

    private final List<Entry> entries = new ArrayList<>();
    private final List<Integer> batches = new ArrayList<>();
    private Disk disk = Disk.FINE;
    private CountDownLatch gate = new CountDownLatch(0);
    private CountDownLatch reached = new CountDownLatch(1);

    public synchronized void fillUp() {
        disk = Disk.FULL;
    }

    public synchronized void makeRoom() {
        disk = Disk.FINE;
    }

    public synchronized void breakDown() {
        disk = Disk.BROKEN;
    }

    /** From now on a force waits until {@link #letGo}. */
    public synchronized void hold() {
        gate = new CountDownLatch(1);
        reached = new CountDownLatch(1);
    }

    public void awaitForce() throws InterruptedException {
        if (!latch(false).await(10, TimeUnit.SECONDS)) {
            throw new AssertionError("nothing was forced to disk");
        }
    }

    public void letGo() {
        latch(true).countDown();
    }

    private synchronized CountDownLatch latch(boolean ofGate) {
        return ofGate ? gate : reached;
    }

    @Override
    public void append(List<Entry> batch) throws NotSaved {
        latch(false).countDown();
        await(latch(true));
        write(batch);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new AssertionError("the desk must never be interrupted in a write", e);
        }
    }

    private synchronized void write(List<Entry> batch) throws NotSaved {
        if (disk == Disk.FULL) {
            throw new NotSaved("no room", new java.io.IOException("no space left on device"));
        }
        if (disk == Disk.BROKEN) {
            throw new IllegalStateException("what was written can't be cut off again");
        }
        entries.addAll(batch);
        batches.add(batch.size());
    }

    public synchronized List<Fact> facts() {
        return entries.stream().flatMap(entry -> entry.facts().stream()).toList();
    }

    public synchronized List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** How many presses shared each force. */
    public synchronized List<Integer> batches() {
        return List.copyOf(batches);
    }
}
