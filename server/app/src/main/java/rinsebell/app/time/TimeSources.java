package rinsebell.app.time;

import java.time.Instant;
import java.util.OptionalLong;

/** What a machine says about time. The salon's clock asks nothing else, so a test can turn time by hand. */
public interface TimeSources {

    /** The wall clock, as finely as the system tells it. People and time servers can set it at any moment. */
    Instant wall();

    /** The wall clock in whole milliseconds since 1970 in UTC. */
    default long wallMillis() {
        return wall().toEpochMilli();
    }

    /** A counter in nanoseconds that nobody can set. It may stand still while the machine sleeps. */
    long monotonicNanos();

    /** Milliseconds since the machine started, sleep included; empty where the system does not tell. */
    OptionalLong uptimeMillis();

    /** An id that the machine makes anew each time it starts; blank where the system does not tell. */
    String bootId();
}
