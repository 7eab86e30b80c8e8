package rinsebell.db.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The disk of this computer. */
final class RealDisk implements Disk {

    @Override
    public OpenFile open(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            Forced.folder(Objects.requireNonNull(file.getParent(), "a journal file lies in a folder"));
            return new ChannelFile(file, key(file), channel);
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    /** What tells a file from another one of the same name; null where the system does not say. */
    private static @Nullable Object key(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }

    private record ChannelFile(Path path, @Nullable Object key, FileChannel channel) implements OpenFile {

        @Override
        public void write(byte[] bytes, long at) throws IOException {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest, at + rest.position());
            }
        }

        @Override
        public void force() throws IOException {
            channel.force(false);
        }

        @Override
        public void cut(long length) throws IOException {
            channel.truncate(length);
        }

        @Override
        public long length() throws IOException {
            return channel.size();
        }

        @Override
        public boolean isInPlace() throws IOException {
            return Files.exists(path) && Objects.equals(key, RealDisk.key(path));
        }

        @Override
        public boolean isOpen() {
            return channel.isOpen();
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}
