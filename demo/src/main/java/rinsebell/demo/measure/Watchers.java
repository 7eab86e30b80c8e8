package rinsebell.demo.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import rinsebell.app.time.MachineTime;

/** Many screens that listen on one thread, and note when the first byte of the next change comes to each. */
final class Watchers implements AutoCloseable {
    private static final byte[] CHANGE = "event: fragment".getBytes(StandardCharsets.US_ASCII);
    private static final MachineTime MACHINE = new MachineTime();

    private final List<SocketChannel> channels = new ArrayList<>();
    private final Selector selector = Selector.open();
    private final long[] cameNanos;
    private final byte[] kept = new byte[1 << 20];
    private int keptBytes;
    private CountDownLatch missing = new CountDownLatch(0);
    private final Thread thread = new Thread(this::listen, "watchers");
    private volatile boolean open = true;

    /** Opens so many streams of one board, and waits until each has what it begins with. */
    Watchers(int port, String board, int many) throws IOException, InterruptedException {
        cameNanos = new long[many];
        expect();
        thread.start();
        for (var i = 0; i < many; i++) {
            add(i, port, board);
        }
        arrivals();
    }

    private void add(int number, int port, String board) throws IOException {
        var channel = opened(port, board);
        channel.configureBlocking(false);
        channels.add(channel);
        selector.wakeup();
        channel.register(selector, SelectionKey.OP_READ, number);
    }

    /** A stream that nobody reads yet. */
    static SocketChannel opened(int port, String board) throws IOException {
        var channel = SocketChannel.open(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        var request = "GET /feed?board=" + board + " HTTP/1.1\r\nHost: localhost:" + port
                + "\r\nAccept: text/event-stream\r\n\r\n";
        channel.write(ByteBuffer.wrap(request.getBytes(StandardCharsets.US_ASCII)));
        return channel;
    }

    /** From now on the next change counts. */
    synchronized void expect() {
        Arrays.fill(cameNanos, 0);
        keptBytes = 0;
        missing = new CountDownLatch(cameNanos.length);
    }

    /** When it came to each, on the monotonic clock. */
    long[] arrivals() throws InterruptedException {
        if (!missing.await(60, TimeUnit.SECONDS)) {
            throw new IllegalStateException(missing.getCount() + " screens heard nothing for a minute");
        }
        synchronized (this) {
            return cameNanos.clone();
        }
    }

    /** What the first of them was sent since, as it went over the wire. */
    synchronized byte[] sent() {
        return Arrays.copyOf(kept, keptBytes);
    }

    private void listen() {
        var buffer = ByteBuffer.allocate(256 * 1024);
        try {
            while (open) {
                selector.select(100);
                for (var key : selector.selectedKeys()) {
                    read(key, buffer);
                }
                selector.selectedKeys().clear();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read(SelectionKey key, ByteBuffer buffer) throws IOException {
        buffer.clear();
        var bytes = ((SocketChannel) key.channel()).read(buffer);
        if (bytes < 0) {
            key.cancel();
            return;
        }
        note((int) key.attachment(), buffer.array(), bytes, MACHINE.monotonicNanos());
    }

    private synchronized void note(int number, byte[] read, int bytes, long now) {
        if (number == 0) {
            System.arraycopy(read, 0, kept, keptBytes, bytes);
            keptBytes += bytes;
        }
        if (cameNanos[number] == 0 && holdsChange(read, bytes)) {
            cameNanos[number] = now;
            missing.countDown();
        }
    }

    /** A beat is no change. */
    private static boolean holdsChange(byte[] read, int bytes) {
        for (var i = 0; i + CHANGE.length <= bytes; i++) {
            if (Arrays.equals(read, i, i + CHANGE.length, CHANGE, 0, CHANGE.length)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void close() throws IOException {
        open = false;
        selector.wakeup();
        for (var channel : channels) {
            channel.close();
        }
    }
}
