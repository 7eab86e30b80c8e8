package rinsebell.app.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.HungUp;
import rinsebell.app.door.Shown;
import rinsebell.app.http.RawHttp2;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.http.TestCertificate;
import rinsebell.app.time.MachineTime;

/** A browser that goes to another page takes back what it had asked for. */
class LeftAloneTest {
    private static final byte[] CANCEL = {0, 0, 0, 8};
    private static final int TIMES = 60;

    @Test
    void whoeverLeavesBeforeTheAnswerIsNoBug(@TempDir Path folder) throws Exception {
        var made = new TestCertificate(folder, "EC", "-1d", 30);
        var now = Instant.ofEpochMilli(new MachineTime().wallMillis());
        var boards = new TwoBoards();
        var heard = new ListAppender<ILoggingEvent>();
        heard.addFilter(new HungUp());
        var root = (Logger) LoggerFactory.getLogger(Logger.ROOT_LOGGER_NAME);
        heard.start();
        root.addAppender(heard);
        try (var feed = new Feed(boards, FeedLimits.usual());
                var server = new ServerUnderTest(
                        List.of(new FeedRoutes(feed, boards)),
                        new Shown(Certificate.read(made.certificate(), made.key(), now)));
                var wire = new RawHttp2(made.trust(), "127.0.0.1", server.securePort(), Map.of())) {
            for (int stream = 1; stream < 2 * TIMES; stream += 2) {
                wire.get(stream, "/feed/once?board=floor", Map.of());
                wire.send(RawHttp2.RST_STREAM, 0, stream, CANCEL);
            }
            wire.get(2 * TIMES + 1, "/feed/once?board=floor", Map.of());
            await().until(() -> wire.next().stream() == 2 * TIMES + 1);
        } finally {
            root.detachAppender(heard);
        }
        assertThat(heard.list)
                .filteredOn(event -> event.getLevel().isGreaterOrEqual(Level.WARN))
                .extracting(ILoggingEvent::getFormattedMessage)
                .isEmpty();
    }
}
