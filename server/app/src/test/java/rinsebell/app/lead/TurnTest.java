package rinsebell.app.lead;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rinsebell.app.door.ProblemException;

/** However many ask, a handful of threads wait, and none of them long. */
class TurnTest {
    private static final int FLOOD = 60;
    private static final Duration LONG = Duration.ofSeconds(20);

    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch over = new CountDownLatch(1);
    private final AtomicInteger atIt = new AtomicInteger();

    @AfterEach
    void close() {
        over.countDown();
        threads.shutdownNow();
    }

    private String works() {
        assertThat(atIt.incrementAndGet()).as("one at a time").isEqualTo(1);
        begun.countDown();
        try {
            assertThat(over.await(LONG.toSeconds(), TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
        }
        atIt.decrementAndGet();
        return "told";
    }

    private List<Future<String>> flood(Turn turn, int many) {
        var asked = new ArrayList<Future<String>>();
        for (var i = 0; i < many; i++) {
            asked.add(threads.submit(() -> turn.take(this::works)));
        }
        return asked;
    }

    private Future<String> hasBegun(Turn turn) throws Exception {
        var first = threads.submit(() -> turn.take(this::works));
        assertThat(begun.await(LONG.toSeconds(), TimeUnit.SECONDS)).isTrue();
        return first;
    }

    private static void assertSentAway(Future<String> other) {
        assertThatThrownBy(other::get)
                .hasCauseInstanceOf(ProblemException.class)
                .hasMessageContaining("reports-busy");
    }

    @Test
    void ofManyAFewWaitAndOthersAreSentAway() throws Exception {
        var turn = new Turn(LONG.multipliedBy(2));
        var first = hasBegun(turn);
        var others = flood(turn, FLOOD);
        await().atMost(LONG).until(() -> others.stream().filter(Future::isDone).count() == FLOOD - Turn.MOST_WAITING);
        var waiting = others.stream().filter(other -> !other.isDone()).toList();
        others.stream().filter(Future::isDone).forEach(TurnTest::assertSentAway);
        over.countDown();
        assertThat(first.get(LONG.toSeconds(), TimeUnit.SECONDS)).isEqualTo("told");
        for (var other : waiting) {
            assertThat(other.get(LONG.toSeconds(), TimeUnit.SECONDS)).isEqualTo("told");
        }
    }

    @Test
    void whoeverWouldWaitLongIsSentAway() throws Exception {
        var turn = new Turn(Duration.ofMillis(50));
        var first = hasBegun(turn);
        var second = flood(turn, 1).get(0);
        await().atMost(LONG).until(second::isDone);
        assertSentAway(second);
        over.countDown();
        assertThat(first.get(LONG.toSeconds(), TimeUnit.SECONDS)).isEqualTo("told");
        assertThat(turn.take(this::works)).as("afterwards").isEqualTo("told");
    }

    @Test
    void whatFailsGivesItsTurnBack() {
        var turn = new Turn(Duration.ofMillis(50));
        for (var i = 0; i < 2 * Turn.MOST_WAITING; i++) {
            assertThatThrownBy(() -> turn.take(() -> {
                        throw new IllegalStateException("the disk is away");
                    }))
                    .hasMessage("the disk is away");
        }
    }
}
