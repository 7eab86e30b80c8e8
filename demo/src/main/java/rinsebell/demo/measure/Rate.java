package rinsebell.demo.measure;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import rinsebell.app.time.MachineTime;

/**
 * How often something was done.
 *
 * @param times how often
 * @param took how long all of it took
 */
record Rate(long times, Duration took) {
    private static final MachineTime MACHINE = new MachineTime();

    /** Something that can be done again and again. */
    @FunctionalInterface
    interface Work {
        void once() throws Exception;
    }

    double perSecond() {
        return times * 1e9 / took.toNanos();
    }

    /** Does something on one thread for at least so long. */
    static Rate of(Duration atLeast, Work work) throws Exception {
        var start = MACHINE.monotonicNanos();
        var times = 0L;
        while (MACHINE.monotonicNanos() - start < atLeast.toNanos()) {
            work.once();
            times++;
        }
        return new Rate(times, since(start));
    }

    /** Does something a number of times. */
    static Rate ofTimes(int times, Work work) throws Exception {
        var start = MACHINE.monotonicNanos();
        for (var i = 0; i < times; i++) {
            work.once();
        }
        return new Rate(times, since(start));
    }

    /** What several do at once, as one rate. */
    static Rate together(List<? extends Callable<Rate>> all) throws Exception {
        var threads = Executors.newFixedThreadPool(all.size());
        try {
            var start = MACHINE.monotonicNanos();
            var running = new ArrayList<Future<Rate>>();
            for (var one : all) {
                running.add(threads.submit(one));
            }
            var times = 0L;
            for (var one : running) {
                times += one.get().times();
            }
            return new Rate(times, since(start));
        } finally {
            threads.shutdownNow();
        }
    }

    private static Duration since(long startNanos) {
        return Duration.ofNanos(MACHINE.monotonicNanos() - startNanos);
    }
}
