package rinsebell.demo.faults;

import java.time.Duration;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import rinsebell.app.time.MachineTime;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.faults.Days [bells [faults [seed]]]}: days with faults on all cores, one
 * seed after another, until so many bells have sounded and so many faults have happened. With a seed alone that failed, as
 * {@code day SEED}, that one day again.
 */
public final class Days {
    private final Tally tally = new Tally();
    private final ConcurrentLinkedQueue<String> failed = new ConcurrentLinkedQueue<>();
    private final AtomicLong next;
    private final long bells;
    private final long faults;

    private Days(long bells, long faults, long seed) {
        this.bells = bells;
        this.faults = faults;
        this.next = new AtomicLong(seed);
    }

    public static void main(String... arguments) {
        Silence.fall();
        if (arguments.length == 2 && arguments[0].equals("day")) {
            System.out.println(Day.live(Long.parseLong(arguments[1]), Parts.HONEST, System.out::println));
            return;
        }
        var bells = arguments.length > 0 ? Long.parseLong(arguments[0]) : 1_000_000;
        var faults = arguments.length > 1 ? Long.parseLong(arguments[1]) : 100_000;
        var seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
        new Days(bells, faults, seed).live();
    }

    private void live() {
        var clock = new MachineTime();
        var begin = clock.monotonicNanos();
        IntStream.range(0, Runtime.getRuntime().availableProcessors())
                .parallel()
                .forEach(core -> liveUntilEnough());
        System.out.println(tally);
        System.out.println(tally.faultsByKind());
        System.out.println((clock.monotonicNanos() - begin) / 1_000_000_000 + " s, of them with a processor: "
                + ProcessHandle.current()
                        .info()
                        .totalCpuDuration()
                        .orElse(Duration.ZERO)
                        .toSeconds() + " s");
        failed.forEach(System.out::println);
        if (!failed.isEmpty()) {
            System.exit(1);
        }
    }

    private void liveUntilEnough() {
        while (failed.size() < 5 && (tally.bells() < bells || tally.faults() < faults)) {
            var seed = next.getAndIncrement();
            try {
                tally.add(Day.live(seed, Parts.HONEST));
            } catch (Broken e) {
                failed.add("day " + seed + ": " + e.getMessage());
            } catch (RuntimeException e) {
                failed.add("day " + seed + ": " + e);
            }
        }
    }
}
