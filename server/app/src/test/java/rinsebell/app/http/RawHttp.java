package rinsebell.app.http;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Sends exactly the bytes given, for requests that no proper client would make, and reads until the server closes. */
public final class RawHttp {

    private static final int PATIENCE_MILLIS = 20_000;

    private RawHttp() {}

    /** The whole answer as text, headers and all. */
    public static String ask(int port, String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(PATIENCE_MILLIS);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            // Half-closed, the server knows that no further request comes and closes after its answer.
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The status of an answer. */
    public static int status(String answer) {
        return Integer.parseInt(answer.split(" ", 3)[1]);
    }

    /** The header lines of an answer, names in lower case. */
    public static String headers(String answer) {
        return answer.split("\r\n\r\n", 2)[0].toLowerCase(Locale.ROOT);
    }
}
