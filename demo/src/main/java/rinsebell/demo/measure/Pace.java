package rinsebell.demo.measure;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Lets a measurement go on at its time. */
public final class Pace implements AutoCloseable {
    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor();

    /** Returns so many nanoseconds from now; at once when that has passed. */
    public void passes(long nanos) throws InterruptedException, ExecutionException {
        timer.schedule(() -> {}, nanos, TimeUnit.NANOSECONDS).get();
    }

    public void passesMillis(long millis) throws InterruptedException, ExecutionException {
        passes(TimeUnit.MILLISECONDS.toNanos(millis));
    }

    @Override
    public void close() {
        timer.shutdownNow();
    }
}
