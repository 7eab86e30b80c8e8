package rinsebell.app.feed;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jetbrains.lincheck.datastructures.Operation;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rinsebell.app.Races;
import rinsebell.app.door.Wire;

@Tag("races")
@Tag("long")
class BrowserStreamsRacesTest {

    @Test
    void tabsThatOpenAtOnceNeverGetMoreThanTheBrowserMayHave() {
        Races.noneIn(Tabs.class);
    }

    public static class Tabs {
        private final BrowserStreams streams = new BrowserStreams();
        private final Deque<Wire> open = new ArrayDeque<>();

        public Tabs() {
            for (var tab = 1; tab < BrowserStreams.MOST; tab++) {
                take();
            }
        }

        @Operation
        public boolean take() {
            var wire = new Tab();
            var taken = streams.take("browser", wire);
            synchronized (open) {
                if (taken) {
                    open.add(wire);
                }
            }
            return taken;
        }

        @Operation
        public boolean giveBack() {
            synchronized (open) {
                if (open.isEmpty()) {
                    return false;
                }
                streams.giveBack("browser", open.remove());
                return true;
            }
        }
    }

    /** A wire that nobody hangs up. */
    private static final class Tab implements Wire {
        @Override
        public boolean isShared() {
            return false;
        }

        @Override
        public void cutOff() {}

        @Override
        public boolean isGone() {
            return false;
        }

        @Override
        public Duration patience() {
            return Duration.ZERO;
        }

        @Override
        public void setPatience(Duration patience) {}
    }
}
