package rinsebell.app.feed;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.util.Callback;
import org.jetbrains.lincheck.datastructures.Operation;
import org.jetbrains.lincheck.datastructures.Validate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rinsebell.app.Races;

@Tag("races")
@Tag("long")
class ScreenRacesTest {

    @Test
    void batchesThatComeAtOnceGoOutOneAfterTheOther() {
        Races.noneIn(Batches.class);
    }

    /** What goes out does so after the answer, so it is looked at when all is quiet. */
    public static class Batches {
        private final Network network = new Network();
        private final Screen screen = new Screen("floor", 64, () -> {});
        private int sent;

        public Batches() {
            screen.writeTo(network);
        }

        @Operation
        public void send() {
            byte batch;
            synchronized (network.out) {
                batch = (byte) ++sent;
            }
            screen.send(new byte[] {batch});
        }

        @Operation
        public void beat() {
            screen.beat(new byte[] {0}, 1_000);
        }

        @Validate
        public void eachWentOutOnce() {
            var batches = new ArrayList<>(network.out);
            batches.removeIf(batch -> batch == 0);
            if (network.overlaps > 0 || batches.size() != sent || new HashSet<>(batches).size() != sent) {
                throw new IllegalStateException(
                        sent + " sent, " + batches + " went out, " + network.overlaps + " over another");
            }
        }
    }

    /** Takes a batch at once, and says so. */
    private static final class Network implements Content.Sink {
        private final List<Byte> out = new ArrayList<>();
        private boolean writing;
        private int overlaps;

        @Override
        public void write(boolean last, ByteBuffer bytes, Callback callback) {
            overlaps += writing ? 1 : 0;
            writing = true;
            out.add(bytes.get());
            writing = false;
            callback.succeeded();
        }
    }
}
