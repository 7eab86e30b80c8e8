package rinsebell.app.thread;

import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Threads for work that mostly waits: virtual ones where the JDK has them, a cached pool where it does not. The only
 * class that knows which.
 */
public final class Threads {

    private Threads() {}

    /** A thread a task, started at once. Close it with {@code shutdownNow}. */
    public static ExecutorService oneForEachTask(String name) {
        return virtualAvailable() ? virtual(name) : Executors.newCachedThreadPool(daemons(name));
    }

    /** One thread that does its tasks in turn, at their time; a daemon, so it never keeps the process alive. */
    public static ScheduledExecutorService timer(String name) {
        return Executors.newSingleThreadScheduledExecutor(daemons(name));
    }

    /** Whether this JDK has virtual threads for good, from 21 on. */
    public static boolean virtualAvailable() {
        return Runtime.version().feature() >= 21;
    }

    /** Compiled for 17, run on 21 and later: the two methods that make virtual threads are found by name. */
    private static ExecutorService virtual(String name) {
        try {
            Object builder = Thread.class.getMethod("ofVirtual").invoke(null);
            Class<?> type = Class.forName("java.lang.Thread$Builder");
            Object named = type.getMethod("name", String.class, long.class).invoke(builder, name + "-", 1L);
            ThreadFactory factory = (ThreadFactory) type.getMethod("factory").invoke(named);
            return (ExecutorService) Executors.class
                    .getMethod("newThreadPerTaskExecutor", ThreadFactory.class)
                    .invoke(null, factory);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("JDK " + Runtime.version() + " should have virtual threads", cause(e));
        }
    }

    private static Throwable cause(ReflectiveOperationException e) {
        Throwable inner = e instanceof InvocationTargetException ? e.getCause() : null;
        return inner == null ? e : inner;
    }

    private static ThreadFactory daemons(String name) {
        AtomicInteger count = new AtomicInteger();
        return task -> {
            Thread thread = new Thread(task, name + "-" + count.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        };
    }
}
