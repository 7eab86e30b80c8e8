package rinsebell.db;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Supplier;

/** Many use the database at once, or one works on its file. */
final class Shut {

    /** A page can wait for as long as the work on a large file takes; whoever waits longer is told that it is away. */
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final ReentrantReadWriteLock lock = new ReentrantReadWriteLock();

    /** Work on the file. */
    interface Work {
        void work() throws IOException;
    }

    boolean isShut() {
        return lock.isWriteLocked();
    }

    /** @throws DatabaseAway if it stays shut for too long */
    <T> T outside(Supplier<T> act) {
        try {
            if (!lock.readLock().tryLock() && !lock.readLock().tryLock(PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
                throw new DatabaseAway(new IOException("its file is being worked on"));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new DatabaseAway(e);
        }
        return done(act, lock.readLock());
    }

    /** @throws DatabaseAway if it is shut */
    <T> T outsideAtOnce(Supplier<T> act) {
        if (!lock.readLock().tryLock()) {
            throw new DatabaseAway(new IOException("its file is being worked on"));
        }
        return done(act, lock.readLock());
    }

    private static <T> T done(Supplier<T> act, Lock held) {
        try {
            return act.get();
        } finally {
            held.unlock();
        }
    }

    /** @throws IOException if the work fails, or others use the database for too long */
    void inside(Work work) throws IOException {
        try {
            if (!lock.writeLock().tryLock(PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
                throw new IOException("the database was in use all the time");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("the database was in use");
        }
        try {
            work.work();
        } finally {
            lock.writeLock().unlock();
        }
    }
}
