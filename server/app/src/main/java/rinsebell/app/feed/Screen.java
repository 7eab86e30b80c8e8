package rinsebell.app.feed;

import java.nio.ByteBuffer;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.util.IteratingCallback;
import org.jspecify.annotations.Nullable;

/**
 * One open stream: a bounded queue that the feed fills without ever waiting, and a writer of its own that empties it.
 * A batch goes to the network as soon as the one before it is out, and no thread waits for that, so hundreds of screens
 * cost little more than their bytes. A screen that cannot keep up is cut off; it comes back by itself and then gets the
 * whole board.
 */
final class Screen {

    private final String board;
    private final Runnable cutOff;
    private final BlockingQueue<byte[]> waiting;
    private final CompletableFuture<Void> ended = new CompletableFuture<>();
    private volatile @Nullable Writer writer;
    private volatile boolean closed;
    private volatile long begun;
    private volatile long done;
    private long begunAtLastBeat;
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

    /** Writes what waits and what comes from now on. Answers when the stream is over and nothing is being written. */
    CompletionStage<Void> writeTo(Content.Sink out) {
        writer = new Writer(out);
        work();
        return ended;
    }

    /** Queues a batch, or cuts the screen off when its queue is full. */
    void send(byte[] batch) {
        if (closed) {
            return;
        }
        if (waiting.offer(batch)) {
            work();
        } else {
            drop();
        }
    }

    /** Queues a beat. A writer that has hung in one write for {@code limit} beats has a dead screen before it. */
    void beat(byte[] beat, int limit) {
        var hangs = begun > done && begun == begunAtLastBeat;
        begunAtLastBeat = begun;
        beatsInOneWrite = hangs ? beatsInOneWrite + 1 : 0;
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

    /** Lets a write that is under way finish; what still waits is forgotten. */
    void end() {
        closed = true;
        waiting.clear();
        work();
    }

    private void work() {
        var working = writer;
        if (working != null) {
            working.iterate();
        }
    }

    /** Batch after batch, each on the thread that brought it or on the one that got the last one out. */
    private final class Writer extends IteratingCallback {
        private final Content.Sink out;

        Writer(Content.Sink out) {
            this.out = out;
        }

        @Override
        protected Action process() {
            if (closed) {
                return Action.SUCCEEDED;
            }
            var batch = waiting.poll();
            if (batch == null) {
                return Action.IDLE;
            }
            begun++;
            out.write(false, ByteBuffer.wrap(batch), this);
            return Action.SCHEDULED;
        }

        @Override
        protected void onSuccess() {
            done = begun;
        }

        @Override
        protected void onCompleteSuccess() {
            ended.complete(null);
        }

        @Override
        protected void onCompleteFailure(Throwable gone) {
            closed = true;
            ended.complete(null);
        }
    }
}
