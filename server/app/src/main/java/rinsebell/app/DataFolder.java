package rinsebell.app;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** The one folder that keeps everything, held by one server at a time. */
final class DataFolder implements AutoCloseable {

    private final Path path;
    private final FileChannel holder;

    private DataFolder(Path path, FileChannel holder) {
        this.path = path;
        this.holder = holder;
    }

    /**
     * Makes the folder where it is missing, and holds it until {@link #close}.
     *
     * @throws CannotStart when it cannot be written to, or another server holds it
     */
    static DataFolder hold(Path folder) throws CannotStart {
        Path path = folder.toAbsolutePath().normalize();
        try {
            Files.createDirectories(path);
            return locked(path);
        } catch (IOException e) {
            throw new CannotStart("The data folder " + path + " cannot be written to. "
                    + "Give it to this user, or choose another with --data.");
        }
    }

    private static DataFolder locked(Path path) throws IOException, CannotStart {
        FileChannel channel =
                FileChannel.open(path.resolve("held"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (lock(channel) == null) {
            channel.close();
            throw new CannotStart("Another Rinsebell already works in the data folder " + path + ". "
                    + "Stop it, or choose another folder with --data.");
        }
        return new DataFolder(path, channel);
    }

    /** The system frees the lock when the process ends, however it ends. */
    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException heldByThisProcess) {
            return null;
        }
    }

    Path path() {
        return path;
    }

    @Override
    public void close() {
        try {
            holder.close();
        } catch (IOException e) {
            throw new IllegalStateException("the data folder " + path + " could not be let go", e);
        }
    }
}
