package rinsebell.demo.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rinsebell.db.journal.Disk;

/**
 * A disk that keeps what was forced, and of what was only written as much as chance will have. The files lie in memory
 * until the power goes; what is left of them then is laid down where the next start reads it.
 */
final class Platter implements Disk {
    private final Parts parts;
    private final Dice dice;
    private final Map<Path, Content> files = new HashMap<>();
    private Crash.@Nullable Point dies;
    private boolean refuses;

    Platter(Parts parts, Dice dice) {
        this.parts = parts;
        this.dice = dice;
    }

    /** The process dies in the next write or after it. */
    void diesAt(Crash.@Nullable Point point) {
        dies = point;
    }

    /** It takes nothing until it does again. */
    void refuses(boolean refusing) {
        refuses = refusing;
    }

    /**
     * Lays down what is left.
     *
     * @param powerGone whether what was not forced is at the mercy of chance; a process that is killed loses nothing
     * @return whether something is torn
     */
    boolean layDown(boolean powerGone) {
        var torn = false;
        for (var file : files.entrySet()) {
            var content = file.getValue();
            torn |= powerGone && content.forced < content.length;
            lay(file.getKey(), powerGone ? content.torn(dice) : content.whole());
        }
        files.clear();
        dies = null;
        return torn;
    }

    private static void lay(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public OpenFile open(Path file) throws IOException {
        if (!files.containsKey(file)) {
            files.put(file, new Content(Files.exists(file) ? Files.readAllBytes(file) : new byte[0]));
        }
        return new Opened(files.getOrDefault(file, new Content(new byte[0])));
    }

    private static final class Content {
        private byte[] bytes;
        private int length;
        private int forced;

        Content(byte[] bytes) {
            this.bytes = bytes;
            this.length = bytes.length;
            this.forced = length;
        }

        void write(byte[] more, int from, int to, int at) {
            if (at + to > bytes.length) {
                bytes = Arrays.copyOf(bytes, 2 * (at + to));
            }
            System.arraycopy(more, from, bytes, at + from, to - from);
            length = Math.max(length, at + to);
            forced = Math.min(forced, at);
        }

        byte[] whole() {
            return Arrays.copyOf(bytes, length);
        }

        /** Of what was not forced a part from its beginning, now and then with a hole of zeros. */
        byte[] torn(Dice dice) {
            var left = Arrays.copyOf(bytes, forced + dice.below(length - forced + 1));
            if (left.length > forced && dice.onceIn(3)) {
                var from = forced + dice.below(left.length - forced);
                Arrays.fill(left, from, Math.min(left.length, from + 512), (byte) 0);
            }
            return left;
        }
    }

    private final class Opened implements OpenFile {
        private final Content content;

        Opened(Content content) {
            this.content = content;
        }

        @Override
        public void write(byte[] bytes, long at) throws IOException {
            if (refuses) {
                content.write(bytes, 0, dice.below(bytes.length), (int) at);
                throw new IOException("no room");
            }
            if (dies == Crash.Point.WRITING) {
                content.write(bytes, 0, bytes.length / 2, (int) at);
                throw new Crash(Crash.Point.WRITING);
            }
            content.write(bytes, 0, bytes.length, (int) at);
            if (dies == Crash.Point.WRITTEN) {
                throw new Crash(Crash.Point.WRITTEN);
            }
        }

        @Override
        public void force() {
            if (parts.forces()) {
                content.forced = content.length;
            }
            if (dies == Crash.Point.FORCED) {
                throw new Crash(Crash.Point.FORCED);
            }
        }

        @Override
        public void cut(long length) {
            content.length = (int) length;
            content.forced = Math.min(content.forced, (int) length);
        }

        @Override
        public long length() {
            return content.length;
        }

        @Override
        public boolean isOpen() {
            return true;
        }

        @Override
        public boolean isInPlace() {
            return true;
        }

        @Override
        public void close() {}
    }
}
