package rinsebell.app.lead;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;

/** Lets one after another at it. Who waits holds a thread that a press may need, so few wait, and not for long. */
final class Turn {
    static final int MOST_WAITING = 4;
    private final Semaphore here = new Semaphore(1 + MOST_WAITING);
    private final Semaphore turn = new Semaphore(1, true);
    private final Duration patience;

    /** @param patience for how long anybody waits */
    Turn(Duration patience) {
        this.patience = patience;
    }

    /**
     * Does it when its turn comes.
     *
     * @throws rinsebell.app.door.ProblemException reports-busy when that takes too long
     */
    <T> T take(Supplier<T> work) {
        if (!here.tryAcquire()) {
            throw busy();
        }
        try {
            return inTurn(work);
        } finally {
            here.release();
        }
    }

    private <T> T inTurn(Supplier<T> work) {
        if (!comes()) {
            throw busy();
        }
        try {
            return work.get();
        } finally {
            turn.release();
        }
    }

    private boolean comes() {
        try {
            return turn.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static RuntimeException busy() {
        return Problem.of(ProblemCode.REPORTS_BUSY).thrown();
    }
}
