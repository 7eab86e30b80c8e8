package rinsebell.demo.measure;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** The yardstick of the feed: a timer that writes the same bytes to as many sockets, and does nothing else. */
final class BareBroadcast implements AutoCloseable {
    private static final byte[] BEGINNING = "event: fragment\n\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII);

    private final ServerSocket server = new ServerSocket(0, 4096, InetAddress.getLoopbackAddress());
    private final List<Socket> sockets = new ArrayList<>();
    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor();
    private final Thread thread = new Thread(this::accept, "bare-broadcast");

    BareBroadcast() throws IOException {
        thread.start();
    }

    int port() {
        return server.getLocalPort();
    }

    private void accept() {
        try {
            while (true) {
                var socket = server.accept();
                socket.setTcpNoDelay(true);
                socket.getOutputStream().write(BEGINNING);
                synchronized (sockets) {
                    sockets.add(socket);
                }
            }
        } catch (IOException closed) {
            // Nobody listens any more.
        }
    }

    /** Writes them to everybody, so many nanoseconds from now. */
    void in(long nanos, byte[] bytes) {
        var unused = timer.schedule(() -> broadcast(bytes), nanos, TimeUnit.NANOSECONDS);
    }

    private Void broadcast(byte[] bytes) throws IOException {
        synchronized (sockets) {
            for (var socket : sockets) {
                socket.getOutputStream().write(bytes);
            }
        }
        return null;
    }

    @Override
    public void close() throws IOException {
        timer.shutdownNow();
        server.close();
        for (var socket : sockets) {
            socket.close();
        }
    }
}
