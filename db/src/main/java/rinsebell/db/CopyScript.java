package rinsebell.db;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.zip.GZIPInputStream;
import org.jdbi.v3.core.Handle;

/** The tables as a compressed script of SQL, which any version of the database from this one on can read. */
final class CopyScript {

    private static final int BUFFER_BYTES = 1 << 16;

    private CopyScript() {}

    /** Writes what this transaction sees. */
    static void write(Handle handle, Path file) {
        handle.execute("script nopasswords nosettings to ? compression gzip", file.toString());
    }

    /**
     * Reads a file from end to end, which compares it with the checksum and the length that stand at its end (RFC 1952).
     *
     * @throws CopyUnreadable if it can't be read, was cut, or differs from what was written
     */
    static void verify(Path file) throws CopyUnreadable {
        try (InputStream in = new GZIPInputStream(Files.newInputStream(file), BUFFER_BYTES)) {
            in.transferTo(OutputStream.nullOutputStream());
        } catch (IOException e) {
            throw new CopyUnreadable("the file is damaged or no copy (" + e + ")", e);
        }
    }

    /**
     * Fills an empty database from a copy.
     *
     * @throws CopyUnreadable if the copy is damaged; what is in the database then is of no use
     * @throws IOException if the system refused something, which says nothing about the copy
     */
    static void run(Path file, Connection empty) throws CopyUnreadable, IOException {
        verify(file);
        try (PreparedStatement run = empty.prepareStatement("runscript from ? compression gzip")) {
            run.setString(1, file.toAbsolutePath().toString());
            run.execute();
        } catch (SQLException e) {
            Database.refusePassing(e);
            throw new CopyUnreadable("the file holds no tables (" + Causes.told(e) + ")", e);
        }
    }
}
