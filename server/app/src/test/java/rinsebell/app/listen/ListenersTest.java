package rinsebell.app.listen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.testing.Saturday;
import rinsebell.web.board.Listening;

/** As many as a salon will never have are remembered, and those that are gone keep nobody out. */
class ListenersTest {
    private static final int MOST = 500;
    private static final Listening HEARD = new Listening(new Ear.Everything(), Listening.State.ON, true);

    private final TimeByHand time = new TimeByHand(Saturday.TEN);
    private final Listeners listeners = new Listeners(time);

    ListenersTest() {
        for (var page = 0; page < MOST; page++) {
            listeners.heard("page-" + page, HEARD);
        }
    }

    @Test
    void noMoreThanThatAreRemembered() {
        assertThat(listeners.heard("one-more", HEARD)).isFalse();
        assertThat(listeners.all()).hasSize(MOST);
    }

    @Test
    void whoeverComesWhenTheOthersAreGoneIsHeard() {
        time.pass(Duration.ofHours(1));
        assertThat(listeners.heard("one-more", HEARD)).isTrue();
        assertThat(listeners.all()).hasSize(1);
    }
}
