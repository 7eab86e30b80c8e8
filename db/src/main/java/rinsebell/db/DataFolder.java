package rinsebell.db;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** The one folder that all data lie in. While it is open no other process can open it. */
public final class DataFolder implements AutoCloseable {

    private static final String LOCK = "in-use.lock";
    private static final String OWNER = "in-use.txt";

    static final String COPIES = "copies";
    static final String ERASURES = "erased.txt";

    static final String KEYRING = "keyring.json";

    private final Path path;
    private final FileChannel lock;

    private DataFolder(Path path, FileChannel lock) {
        this.path = path;
        this.lock = lock;
    }

    /**
     * Opens a folder and creates it if need be.
     *
     * @throws FolderInUse if it is open already, here or in another process
     * @throws IOException if it can't be created or written, or its name can't stand in a database's address
     */
    public static DataFolder open(Path path) throws IOException {
        Path folder = path.toAbsolutePath().normalize();
        if (folder.toString().indexOf(';') >= 0) {
            throw new IOException("a data folder's name can't have a semicolon: " + folder);
        }
        Files.createDirectories(folder);
        FileChannel channel =
                FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            return locked(folder, channel);
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private static DataFolder locked(Path folder, FileChannel channel) throws IOException {
        if (tryLock(channel) == null) {
            throw new FolderInUse(folder, owner(folder));
        }
        Files.writeString(
                folder.resolve(OWNER), Long.toString(ProcessHandle.current().pid()));
        return new DataFolder(folder, channel);
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    /** Best effort: the message is good without it. The lock file itself can't be read elsewhere on Windows. */
    private static String owner(Path folder) {
        try {
            return Files.readString(folder.resolve(OWNER)).strip();
        } catch (IOException e) {
            return "";
        }
    }

    public Path path() {
        return path;
    }

    Path journal() {
        return path.resolve("journal");
    }

    /** The database, as it is called in a connection address: the file's name goes on with {@code .mv.db}. */
    Path database() {
        return path.resolve("rinsebell");
    }

    Path databaseFile() {
        return path.resolve("rinsebell.mv.db");
    }

    /** A database that is being made again, until it is whole. */
    Path newDatabase() {
        return path.resolve("rinsebell-new");
    }

    Path newDatabaseFile() {
        return path.resolve("rinsebell-new.mv.db");
    }

    Path waitingTexts() {
        return path.resolve("waiting-texts.txt");
    }

    /** Numbers of what was erased; see {@link Erasures}. */
    Path erasures() {
        return path.resolve(ERASURES);
    }

    /** The devices that are in, and PINs; see {@link Keyring}. */
    Path keyring() {
        return path.resolve(KEYRING);
    }

    Path copies() {
        return path.resolve(COPIES);
    }

    /** Where databases that would not open are kept for somebody who can read them. */
    Path setAside() {
        return path.resolve("set-aside");
    }

    Path setAside(int number) {
        return setAside().resolve("rinsebell-" + number + ".mv.db");
    }

    @Override
    public void close() throws IOException {
        lock.close();
    }
}
