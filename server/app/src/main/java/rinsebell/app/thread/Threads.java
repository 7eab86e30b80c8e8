package rinsebell.app.thread;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;

/** The threads of the house, and whether this JDK has virtual ones for what answers requests. */
public final class Threads {

    private Threads() {}

    /** One thread that does its tasks in turn, at their time; a daemon, so it never keeps the process alive. */
    public static ScheduledExecutorService timer(String name) {
        return Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Whether this JDK has virtual threads for good, from 21 on. */
    public static boolean virtualAvailable() {
        return Runtime.version().feature() >= 21;
    }
}
