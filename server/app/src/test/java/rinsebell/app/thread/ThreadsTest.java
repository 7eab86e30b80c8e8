package rinsebell.app.thread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class ThreadsTest {

    @Test
    void aTimersThreadIsNamedAndNeverKeepsTheProcessAlive() throws Exception {
        var timer = Threads.timer("bells");
        Thread thread = timer.submit(Thread::currentThread).get(10, TimeUnit.SECONDS);
        assertThat(thread.getName()).isEqualTo("bells");
        assertThat(thread.isDaemon()).isTrue();
        timer.shutdownNow();
    }
}
