package rinsebell.demo.measure;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;

/** What the disk can do for certain: the yardsticks of presses. */
final class ForcedDisk implements AutoCloseable {
    private static final int EACH = 300;

    private final Path place;
    private final byte[] line;

    /** @param bytes of one press */
    ForcedDisk(int bytes) throws IOException {
        place = Files.createTempDirectory("rinsebell-yardstick");
        line = "x".repeat(bytes).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
    }

    /** Lines that are appended to a file, so many of them for each force. */
    Rate file(int writers, int linesForEachForce) throws Exception {
        return Rate.together(IntStream.range(0, writers)
                .mapToObj(writer ->
                        appending(place.resolve("file-" + writer + "-" + linesForEachForce), linesForEachForce))
                .toList());
    }

    private Callable<Rate> appending(Path path, int lines) {
        return () -> {
            try (var file = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
                var rate = Rate.ofTimes(EACH, () -> append(file, lines));
                return new Rate(rate.times() * lines, rate.took());
            }
        };
    }

    private void append(FileChannel file, int lines) throws IOException {
        for (var i = 0; i < lines; i++) {
            file.write(ByteBuffer.wrap(line));
        }
        file.force(false);
    }

    /** Rows that are inserted, committed and forced, each for itself. */
    Rate database(int writers) throws Exception {
        var url = "jdbc:h2:file:" + place.resolve("database-" + writers) + ";WRITE_DELAY=0";
        try (var keeps = DriverManager.getConnection(url, "sa", "");
                var make = keeps.createStatement()) {
            make.execute("create table press (id varchar primary key, body varchar)");
            return Rate.together(IntStream.range(0, writers)
                    .mapToObj(writer -> inserting(url))
                    .toList());
        }
    }

    private Callable<Rate> inserting(String url) {
        return () -> {
            try (var connection = DriverManager.getConnection(url, "sa", "")) {
                connection.setAutoCommit(false);
                return Rate.ofTimes(EACH, () -> insert(connection));
            }
        };
    }

    private void insert(Connection connection) throws SQLException {
        try (var insert = connection.prepareStatement("insert into press (id, body) values (?, ?)");
                var force = connection.createStatement()) {
            insert.setString(1, UUID.randomUUID().toString());
            insert.setString(2, new String(line, java.nio.charset.StandardCharsets.US_ASCII));
            insert.executeUpdate();
            connection.commit();
            force.execute("checkpoint sync");
        }
    }

    @Override
    public void close() throws IOException {
        Served.delete(place);
    }
}
