package rinsebell.app.door;

import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.IThrowableProxy;
import ch.qos.logback.classic.spi.ThrowableProxy;
import ch.qos.logback.core.filter.Filter;
import ch.qos.logback.core.spi.FilterReply;
import java.io.IOException;

/**
 * Keeps it out of the log that somebody hung up in the middle of an answer: the library that writes answers takes that for a
 * bug, so whoever likes could fill the log. What goes wrong in our own handlers is logged by the door.
 */
public final class HungUp extends Filter<ILoggingEvent> {
    private static final String WRITES_ANSWERS = "io.javalin";

    @Override
    public FilterReply decide(ILoggingEvent event) {
        return event.getLoggerName().startsWith(WRITES_ANSWERS) && isBrokenWire(event.getThrowableProxy())
                ? FilterReply.DENY
                : FilterReply.NEUTRAL;
    }

    private static boolean isBrokenWire(IThrowableProxy thrown) {
        return thrown instanceof ThrowableProxy known && known.getThrowable() instanceof IOException;
    }
}
