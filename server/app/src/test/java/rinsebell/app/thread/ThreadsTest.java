package rinsebell.app.thread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class ThreadsTest {

    @Test
    void tasksThatWaitForEachOtherAllRun() throws InterruptedException {
        ExecutorService threads = Threads.oneForEachTask("waiting");
        CountDownLatch all = new CountDownLatch(300);
        for (int i = 0; i < 300; i++) {
            threads.execute(() -> waitForAll(all));
        }
        assertThat(all.await(20, TimeUnit.SECONDS)).isTrue();
        threads.shutdownNow();
    }

    @Test
    void theirThreadsAreNamedAndNeverKeepTheProcessAlive() throws Exception {
        ExecutorService threads = Threads.oneForEachTask("screen");
        Thread thread = threads.submit(Thread::currentThread).get(10, TimeUnit.SECONDS);
        assertThat(thread.getName()).startsWith("screen-");
        assertThat(thread.isDaemon()).isTrue();
        threads.shutdownNow();
    }

    private static void waitForAll(CountDownLatch all) {
        all.countDown();
        try {
            all.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
