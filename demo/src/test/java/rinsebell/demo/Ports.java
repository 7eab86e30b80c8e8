package rinsebell.demo;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** Where a demo of a test serves HTTP, and HTTPS where it was told to; known before it starts, and kept over a kill. */
public record Ports(int plain, int secure) {
    /** Two that nobody uses just now. */
    public static Ports free() throws IOException {
        try (var one = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                var other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return new Ports(one.getLocalPort(), other.getLocalPort());
        }
    }

    public String url() {
        return "http://localhost:" + plain;
    }

    public String secureUrl() {
        return "https://localhost:" + secure;
    }
}
