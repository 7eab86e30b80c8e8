package rinsebell.app.listen;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.jetbrains.lincheck.datastructures.IntGen;
import org.jetbrains.lincheck.datastructures.Operation;
import org.jetbrains.lincheck.datastructures.Param;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rinsebell.app.Races;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.bell.Ear;
import rinsebell.web.board.Listening;

@Tag("races")
@Tag("long")
class ListenersRacesTest {

    @Test
    void pagesThatSpeakAtOnceAreAllHeard() {
        Races.noneIn(Pages.class);
    }

    /** The same without a lock. */
    @Test
    void aListThatIsNotGuardedIsFoundOut() {
        Races.foundIn(Unguarded.class);
    }

    @Param(name = "page", gen = IntGen.class, conf = "1:3")
    public static class Pages {
        private final TimeByHand time = new TimeByHand(Instant.EPOCH);
        private final Listeners listeners = new Listeners(time);

        @Operation
        public boolean heard(@Param(name = "page") int page) {
            return listeners.heard("page-" + page, new Listening(new Ear.Everything(), Listening.State.ON, true));
        }

        @Operation
        public int all() {
            return listeners.all().size();
        }

        @Operation
        public void later() {
            time.pass(Duration.ofSeconds(20));
        }

        @Operation
        public void forget() {
            listeners.forgetGone();
        }
    }

    @Param(name = "page", gen = IntGen.class, conf = "1:3")
    public static class Unguarded {
        private final Map<String, Integer> heard = new HashMap<>();

        @Operation
        public int heard(@Param(name = "page") int page) {
            var before = heard.getOrDefault("page-" + page, 0);
            heard.put("page-" + page, before + 1);
            return before;
        }
    }
}
