package rinsebell.app;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.joran.JoranConfigurator;
import ch.qos.logback.classic.spi.LoggingEvent;
import ch.qos.logback.core.ConsoleAppender;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.TimeZone;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** How the log is written, by the file that the program ships (OWASP ASVS 5.0, 16.2 and 16.4.1). */
class LogLinesTest {
    private static String written(String message, @Nullable Exception why) throws Exception {
        var context = new LoggerContext();
        var reader = new JoranConfigurator();
        reader.setContext(context);
        reader.doConfigure(Objects.requireNonNull(LogLinesTest.class.getResource("/logback.xml")));
        Logger root = context.getLogger(Logger.ROOT_LOGGER_NAME);
        var console = (ConsoleAppender<ch.qos.logback.classic.spi.ILoggingEvent>) root.getAppender("stderr");
        assertThat(console.getTarget()).isEqualTo("System.err");
        assertThat(root.getLevel()).as("no library chats").isEqualTo(Level.WARN);
        assertThat(context.getLogger("rinsebell").getLevel()).isEqualTo(Level.INFO);
        var event = new LoggingEvent("", context.getLogger("rinsebell.door"), Level.WARN, message, why, null);
        return new String(console.getEncoder().encode(event), StandardCharsets.UTF_8);
    }

    /** CWE-117: a text with an end of line in it would look like an event of its own. */
    @Test
    void oneEventIsOneLine() throws Exception {
        var line = written("a name\r\n2026-11-14T09:00:00.000Z ERROR door - invented\u2028and more", null);
        assertThat(line.strip().lines()).hasSize(1);
        assertThat(line.codePoints().filter(one -> one == 0x2028)).isEmpty();
    }

    @Test
    void whatFollowsAnEventIsIndented() throws Exception {
        var lines = written("failed", new IllegalStateException("a name\n2026-11-14T09:00:00.000Z ERROR invented"));
        assertThat(lines.strip().lines().skip(1))
                .hasSizeGreaterThan(3)
                .allMatch(line -> line.startsWith("  "))
                .anyMatch(line -> line.contains("invented"));
    }

    /** ISO 8601 in UTC wherever the machine is, how bad it is, who says it, what. */
    @Test
    void itSaysWhenInUtcHowBadAndWho() throws Exception {
        var here = TimeZone.getDefault();
        TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
        try {
            assertThat(written("the words", null))
                    .matches(
                            "\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{3}Z WARN  rinsebell\\.door - the words\\R");
        } finally {
            TimeZone.setDefault(here);
        }
    }
}
