package rinsebell.app.feed;

import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/**
 * One open stream: a bounded queue that the feed fills without ever waiting, and a writer that empties it on a thread
 * of its own. A screen that cannot keep up is cut off; it comes back by itself and then gets the whole board.
 */
final class Screen {

    private static final byte[] END = {};

    private final String board;
    private final Runnable cutOff;
    private final BlockingQueue<byte[]> waiting;
    private volatile boolean closed;
    private volatile boolean writing;
    private int beatsInOneWrite;

    /**
     * @param board the board it shows
     * @param capacity how many batches may wait before the screen counts as stuck
     * @param cutOff breaks the connection under a write that hangs
     */
    Screen(String board, int capacity, Runnable cutOff) {
        this.board = board;
        this.waiting = new ArrayBlockingQueue<>(capacity);
        this.cutOff = cutOff;
    }

    String board() {
        return board;
    }

    boolean closed() {
        return closed;
    }

    /** Queues a batch, or cuts the screen off when its queue is full. */
    void send(byte[] batch) {
        if (!closed && !waiting.offer(batch)) {
            drop();
        }
    }

    /** Queues a beat. A writer that has hung in one write for {@code limit} beats has a dead screen before it. */
    void beat(byte[] beat, int limit) {
        beatsInOneWrite = writing ? beatsInOneWrite + 1 : 0;
        if (beatsInOneWrite >= limit) {
            drop();
        } else {
            send(beat);
        }
    }

    /** Breaks the connection at once. */
    void drop() {
        end();
        cutOff.run();
    }

    /** Lets the writer finish; what still waits is forgotten. */
    void end() {
        closed = true;
        waiting.clear();
        // The queue was just emptied and closed screens take nothing more, so there is room for the end mark.
        waiting.offer(END);
    }

    /** Writes batch after batch until the screen ends or its connection breaks. */
    void writeTo(OutputStream out) throws IOException, InterruptedException {
        try {
            for (byte[] batch = waiting.take(); batch != END; batch = waiting.take()) {
                write(batch, out);
            }
        } finally {
            closed = true;
        }
    }

    private void write(byte[] batch, OutputStream out) throws IOException {
        writing = true;
        out.write(batch);
        out.flush();
        writing = false;
    }
}
