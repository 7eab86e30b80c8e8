package rinsebell.demo.measure;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A connection that stays open, with as little of its own to do as can be: what is measured is the server, and it shares
 * the processors with this.
 */
final class Connection implements AutoCloseable {
    private static final String CHUNKED = "transfer-encoding: chunked";
    private static final String LENGTH = "content-length: ";

    private final Socket socket;
    private final InputStream in;
    private final String host;

    Connection(int port) throws IOException {
        socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        in = new BufferedInputStream(socket.getInputStream(), 64 * 1024);
        host = "Host: localhost:" + port + "\r\n";
    }

    /**
     * What came back.
     *
     * @param status of HTTP
     * @param bytes of the body, as they went over the wire
     * @param body as text, where it was not compressed
     */
    record Answer(int status, long bytes, String body) {}

    Answer get(String path, String headers) throws IOException {
        return send("GET " + path + " HTTP/1.1\r\n" + host + headers + "\r\n");
    }

    Answer post(String path, String pressId, String body) throws IOException {
        return send("POST " + path + " HTTP/1.1\r\n" + host + "Idempotency-Key: " + pressId
                + "\r\nContent-Type: application/json\r\nContent-Length: " + body.length() + "\r\n\r\n" + body);
    }

    private Answer send(String request) throws IOException {
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        var status = Integer.parseInt(line().split(" ", 3)[1]);
        var length = -1L;
        for (var header = line(); !header.isEmpty(); header = line()) {
            var small = header.toLowerCase(Locale.ROOT);
            length = small.startsWith(LENGTH) ? Long.parseLong(small.substring(LENGTH.length())) : length;
            length = small.equals(CHUNKED) ? -1 : length;
        }
        return length >= 0 ? whole(status, length) : chunks(status);
    }

    private Answer whole(int status, long length) throws IOException {
        return new Answer(status, length, text(in.readNBytes((int) length)));
    }

    private Answer chunks(int status) throws IOException {
        var body = new StringBuilder();
        var bytes = 0L;
        for (var size = chunk(); size > 0; size = chunk()) {
            body.append(text(in.readNBytes(size)));
            bytes += size;
            line();
        }
        line();
        return new Answer(status, bytes, body.toString());
    }

    private int chunk() throws IOException {
        return Integer.parseInt(line(), 16);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private String line() throws IOException {
        var line = new StringBuilder();
        for (var next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new EOFException("the server closed the connection");
            }
            line.append((char) next);
        }
        return line.toString().strip();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
