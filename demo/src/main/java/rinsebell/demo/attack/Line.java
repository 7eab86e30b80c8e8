package rinsebell.demo.attack;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.net.ssl.SSLContext;

/** A connection that stays open, from an address of one's own: all of 127.0.0.0/8 is this machine (RFC 1122, 3.2.1.3). */
final class Line implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 5_000;
    private static final String LENGTH = "content-length: ";

    private final Socket socket;
    private final InputStream in;
    private final String host;
    private boolean isBegun;

    Line(String from, int port, SSLContext trust) throws IOException {
        host = "Host: " + House.NAME + ":" + port + "\r\n";
        socket = trust.getSocketFactory().createSocket();
        socket.bind(new InetSocketAddress(InetAddress.getByName(from), 0));
        socket.setSoTimeout(PATIENCE_MILLIS);
        socket.setTcpNoDelay(true);
        socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), PATIENCE_MILLIS);
        ((javax.net.ssl.SSLSocket) socket).startHandshake();
        in = new BufferedInputStream(socket.getInputStream());
    }

    /**
     * What came back.
     *
     * @param status of HTTP
     * @param body as text, where its length was said
     */
    record Answer(int status, String body) {}

    Answer ask(String what, String headers, String body) throws IOException {
        send(what + " HTTP/1.1\r\n" + host + headers + "Content-Length: " + body.length() + "\r\n\r\n" + body);
        var status = Integer.parseInt(line().split(" ", 3)[1]);
        var length = 0;
        for (var header = line(); !header.isEmpty(); header = line()) {
            var small = header.toLowerCase(Locale.ROOT);
            length = small.startsWith(LENGTH) ? Integer.parseInt(small.substring(LENGTH.length())) : length;
        }
        return new Answer(status, new String(in.readNBytes(length), StandardCharsets.UTF_8));
    }

    private void send(String bytes) throws IOException {
        socket.getOutputStream().write(bytes.getBytes(StandardCharsets.US_ASCII));
    }

    /** A request that never ends, and one more sign of it each time. */
    void goesOn() throws IOException {
        send(isBegun ? "x" : "GET /feed?board=floor HTTP/1.1\r\n" + host + "X: ");
        isBegun = true;
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
