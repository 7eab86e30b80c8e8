package rinsebell.db;

import java.io.IOException;
import java.nio.file.Files;

/** What is left on the disk is for presses first. */
final class Room {

    private static final long FOR_PRESSES_BYTES = 32L << 20;

    private Room() {}

    /**
     * @param times how often the database will be written beside itself
     * @throws IOException if too little would be left
     */
    static void refuseLast(DataFolder folder, int times) throws IOException {
        long wanted = FOR_PRESSES_BYTES + times * Files.size(folder.databaseFile());
        long free = Files.getFileStore(folder.path()).getUsableSpace();
        if (free < wanted) {
            throw new IOException("this wants " + wanted + " bytes of room, and the disk has " + free + " left");
        }
    }
}
