package rinsebell.demo.faults;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import org.slf4j.LoggerFactory;

/** What goes wrong here is meant to, so nobody wants to read of it in a log. */
final class Silence {
    private Silence() {}

    static void fall() {
        if (LoggerFactory.getLogger("rinsebell") instanceof Logger logger) {
            logger.setLevel(Level.OFF);
        }
    }
}
