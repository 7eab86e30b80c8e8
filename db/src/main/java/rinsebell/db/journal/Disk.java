package rinsebell.db.journal;

import java.io.IOException;
import java.nio.file.Path;

/** The few things the journal asks of a disk; a test can let each of them fail. */
public interface Disk {

    /** Opens a file for writing and creates it if it is not there; then its name is on disk for certain too. */
    OpenFile open(Path file) throws IOException;

    /** A file that is being written. */
    interface OpenFile extends AutoCloseable {

        /** Writes all the bytes at a place in the file. */
        void write(byte[] bytes, long at) throws IOException;

        /** Returns when everything written so far would survive the power going. */
        void force() throws IOException;

        /** Cuts the file off at a length in bytes. */
        void cut(long length) throws IOException;

        long length() throws IOException;

        boolean isOpen();

        /** Whether its name still leads to it: what is written to a deleted file is gone when the process ends. */
        boolean isInPlace() throws IOException;

        @Override
        void close() throws IOException;
    }
}
