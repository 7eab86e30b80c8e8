package rinsebell.app.feed;

import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Predicate;
import rinsebell.app.http.EventStream;
import rinsebell.app.http.ServerUnderTest;

/** A screen of its own: one connection that reads a board's stream as a browser does. */
final class StreamReader implements AutoCloseable {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Socket socket;
    private final EventStream stream = new EventStream();
    private final StringBuilder text = new StringBuilder();
    private String head = "";
    private boolean ended;

    StreamReader(ServerUnderTest server, String board) {
        this(server, board, "");
    }

    StreamReader(ServerUnderTest server, String board, String cookie) {
        try {
            socket = new Socket("127.0.0.1", server.port());
            // HTTP/1.0 has no chunks, so the stream itself is what comes over the wire.
            String request = "GET /feed?board=" + board + " HTTP/1.0\r\nHost: localhost:" + server.port()
                    + "\r\nAccept: text/event-stream\r\nCookie: " + cookie + "\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Thread thread = new Thread(this::readAll, "stream-reader");
        thread.setDaemon(true);
        thread.start();
    }

    private void readAll() {
        try (Reader in = new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8)) {
            char[] chunk = new char[8_192];
            for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                take(new String(chunk, 0, read));
            }
        } catch (IOException closed) {
            // A reset ends the stream as well as an orderly close.
        }
        synchronized (this) {
            ended = true;
        }
    }

    private synchronized void take(String more) {
        text.append(more);
        if (!head.isEmpty()) {
            stream.read(more);
            return;
        }
        int end = text.indexOf("\r\n\r\n");
        if (end >= 0) {
            head = text.substring(0, end);
            text.delete(0, end + 4);
            stream.read(text.toString());
        }
    }

    /** The status line and the headers. */
    synchronized String head() {
        return head;
    }

    /** What came after the headers. */
    synchronized String text() {
        return text.toString();
    }

    synchronized List<EventStream.Event> events() {
        return stream.events();
    }

    List<EventStream.Event> named(String type) {
        return events().stream().filter(event -> event.type().equals(type)).toList();
    }

    /** Waits for so many fragments, and answers all that came. */
    List<JsonNode> fragments(int count) {
        untilCount(count);
        return named("fragment").stream().map(StreamReader::json).toList();
    }

    void untilCount(int fragments) {
        until(reader -> reader.named("fragment").size() >= fragments);
    }

    void until(Predicate<StreamReader> condition) {
        await().pollInterval(java.time.Duration.ofMillis(5)).until(() -> condition.test(this));
    }

    void untilClosed() {
        until(reader -> reader.ended());
    }

    private synchronized boolean ended() {
        return ended;
    }

    private static JsonNode json(EventStream.Event event) {
        try {
            return JSON.readTree(event.data());
        } catch (JsonProcessingException e) {
            throw new AssertionError("not JSON: " + event, e);
        }
    }

    @Override
    public void close() {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
