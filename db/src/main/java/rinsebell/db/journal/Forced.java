package rinsebell.db.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Sees to it that what was written would survive the power going. */
public final class Forced {

    private Forced() {}

    /** Returns when all that was written into a file is on disk. */
    public static void file(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /**
     * Returns when the names of a folder's files are on disk: a new file's name is an entry of its folder. Windows can't
     * force folders and writes such entries at once.
     */
    public static void folder(Path folder) throws IOException {
        if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
