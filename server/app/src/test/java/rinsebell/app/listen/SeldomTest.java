package rinsebell.app.listen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import rinsebell.app.time.MachineTime;

class SeldomTest {
    private static final Duration APART = Duration.ofMillis(100);

    private final MachineTime time = new MachineTime();
    private final AtomicInteger done = new AtomicInteger();

    @Test
    void howeverOftenItIsAskedForItIsDoneNowAndThen() {
        try (var seldom = new Seldom(done::incrementAndGet, APART, time)) {
            var began = time.monotonicNanos();
            while (done.get() < 6) {
                seldom.ask();
            }
            assertThat(time.monotonicNanos() - began)
                    .isGreaterThanOrEqualTo(APART.multipliedBy(5).toNanos());
        }
    }

    /** The first time it is done at once, and what is asked for meanwhile is not forgotten. */
    @Test
    void whateverIsAskedForIsDone() {
        try (var seldom = new Seldom(done::incrementAndGet, Duration.ofSeconds(1), time)) {
            seldom.ask();
            await().until(() -> done.get() == 1);
            seldom.ask();
            seldom.ask();
            await().until(() -> done.get() == 2);
        }
    }

    @Test
    void whatFailsIsDoneTheNextTime() {
        try (var seldom = new Seldom(
                () -> {
                    if (done.incrementAndGet() == 1) {
                        throw new IllegalStateException("the first time");
                    }
                },
                APART,
                time)) {
            seldom.ask();
            await().until(() -> done.get() == 1);
            seldom.ask();
            await().until(() -> done.get() == 2);
        }
    }
}
