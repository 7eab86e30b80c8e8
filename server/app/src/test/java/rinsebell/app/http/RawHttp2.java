package rinsebell.app.http;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;

/** Sends exactly the frames given (RFC 9113, sections 3.4 and 4.1), for connections that no proper client would make. */
public final class RawHttp2 implements AutoCloseable {
    public static final int HEADERS = 1;
    public static final int RST_STREAM = 3;
    public static final int SETTINGS = 4;
    public static final int PING = 6;
    public static final int GOAWAY = 7;
    public static final int CONTINUATION = 9;

    public static final int END_STREAM = 1;
    public static final int END_HEADERS = 4;

    private static final String PREFACE = "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n";
    private static final int PATIENCE_MILLIS = 20_000;

    private final SSLSocket socket;
    private final OutputStream out;
    private final DataInputStream in;
    private final String authority;

    /** One frame that came. */
    public record Frame(int type, int flags, int stream, byte[] payload) {}

    /**
     * Connects.
     *
     * @param from an address of this machine
     * @param settings each its number and value (section 6.5.2), such as 4 and 0 for a window in which nothing fits
     */
    public RawHttp2(SSLContext trust, String from, int port, Map<Integer, Integer> settings) throws IOException {
        socket = (SSLSocket) trust.getSocketFactory().createSocket();
        socket.bind(new InetSocketAddress(InetAddress.getByName(from), 0));
        socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        socket.setSoTimeout(PATIENCE_MILLIS);
        SSLParameters parameters = socket.getSSLParameters();
        parameters.setApplicationProtocols(new String[] {"h2"});
        socket.setSSLParameters(parameters);
        socket.startHandshake();
        out = socket.getOutputStream();
        in = new DataInputStream(socket.getInputStream());
        authority = "localhost:" + port;
        out.write(PREFACE.getBytes(StandardCharsets.US_ASCII));
        ByteBuffer pairs = ByteBuffer.allocate(6 * settings.size());
        settings.forEach((number, value) -> pairs.putShort(number.shortValue()).putInt(value));
        send(SETTINGS, 0, 0, pairs.array());
    }

    public void send(int type, int flags, int stream, byte[] payload) throws IOException {
        ByteBuffer frame = ByteBuffer.allocate(9 + payload.length);
        frame.put((byte) (payload.length >> 16)).putShort((short) payload.length);
        frame.put((byte) type).put((byte) flags).putInt(stream).put(payload);
        out.write(frame.array());
    }

    /** Asks for a page on a fresh stream. */
    public void get(int stream, String path, Map<String, String> headers) throws IOException {
        send(HEADERS, END_STREAM | END_HEADERS, stream, fields(path, headers));
    }

    /** The fields of such a request, written out in full (RFC 7541, section 6.2.2); each at most 126 long. */
    public byte[] fields(String path, Map<String, String> headers) {
        ByteArrayOutputStream fields = new ByteArrayOutputStream();
        field(fields, ":method", "GET");
        field(fields, ":scheme", "https");
        field(fields, ":authority", authority);
        field(fields, ":path", path);
        headers.forEach((name, value) -> field(fields, name, value));
        return fields.toByteArray();
    }

    private static void field(ByteArrayOutputStream fields, String name, String value) {
        fields.write(0);
        for (String text : new String[] {name, value}) {
            fields.write(text.length());
            fields.writeBytes(text.getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** The next frame that comes; throws when none can come any more. */
    public Frame next() throws IOException {
        int length = in.readUnsignedByte() << 16 | in.readUnsignedShort();
        int type = in.readUnsignedByte();
        int flags = in.readUnsignedByte();
        int stream = in.readInt();
        return new Frame(type, flags, stream, in.readNBytes(length));
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
