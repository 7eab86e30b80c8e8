package rinsebell.db;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.h2.api.ErrorCode;
import org.jdbi.v3.core.Jdbi;

/** The H2 file, with its tables brought up to this version of the program. */
final class Database implements AutoCloseable {

    /** The floor's writer, a few people looking things up, and one to spare. */
    private static final int CONNECTIONS = 4;

    /** What H2 answers when a file is no database of its, or can't be read to the end. */
    private static final Set<Integer> DAMAGE = Set.of(
            ErrorCode.FILE_CORRUPTED_1, ErrorCode.IO_EXCEPTION_1, ErrorCode.IO_EXCEPTION_2, ErrorCode.GENERAL_ERROR_1);

    /** What it answers when the machine has run out of something, which says nothing about the file. */
    private static final Set<Integer> PASSING = Set.of(
            ErrorCode.OUT_OF_MEMORY,
            ErrorCode.DATABASE_IS_READ_ONLY,
            ErrorCode.LOCK_TIMEOUT_1);

    private final HikariDataSource connections;
    private final Jdbi jdbi;

    private Database(HikariDataSource connections) {
        this.connections = connections;
        this.jdbi = Jdbi.create(connections);
    }

    /**
     * Opens the database in a file and creates it if need be.
     *
     * @param name the file's path without {@code .mv.db}
     * @throws DatabaseUnreadable if the file is no database, or a damaged one
     * @throws StoreBroken if its tables are not of this version of the program and can't be brought up to it
     * @throws IOException if the disk is full or the file may not be used, which leaves it open whether it is sound
     * @throws RuntimeException if it is in use
     */
    static Database open(Path name) throws IOException, DatabaseUnreadable {
        try {
            return migrated(new HikariDataSource(config(name)));
        } catch (RuntimeException e) {
            refusePassing(e);
            if (isDamage(e)) {
                throw new DatabaseUnreadable(e);
            }
            throw e instanceof FlywayException ? strange(e) : e;
        }
    }

    private static StoreBroken strange(RuntimeException cause) {
        return new StoreBroken(
                "the database's tables are not those of this version of the program: " + cause.getMessage(), cause);
    }

    private static Database migrated(HikariDataSource connections) {
        try {
            migrate(connections);
            return new Database(connections);
        } catch (RuntimeException e) {
            connections.close();
            throw e;
        }
    }

    private static boolean isDamage(RuntimeException thrown) {
        return causes(thrown).anyMatch(cause -> cause instanceof SQLException sql && DAMAGE.contains(sql.getErrorCode()));
    }

    /** @throws IOException if it was the system that refused something, which says nothing about the file */
    static void refusePassing(RuntimeException thrown) throws IOException {
        if (isPassing(thrown)) {
            throw new IOException("the database file can't be used now: " + innermost(thrown), thrown);
        }
    }

    /** Whether the system refused something. A file that merely ends too early is damaged. */
    private static boolean isPassing(RuntimeException thrown) {
        return causes(thrown)
                .anyMatch(cause -> (cause instanceof IOException && !(cause instanceof EOFException))
                        || cause instanceof OutOfMemoryError
                        || (cause instanceof SQLException sql && PASSING.contains(sql.getErrorCode())));
    }

    private static Stream<Throwable> causes(Throwable thrown) {
        return Stream.iterate(thrown, Objects::nonNull, Throwable::getCause);
    }

    private static Throwable innermost(Throwable thrown) {
        return causes(thrown).reduce(thrown, (outer, inner) -> inner);
    }

    /** WRITE_DELAY=0 hands each commit to the operating system at once; the journal covers what that may still lose. */
    private static HikariConfig config(Path name) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("database");
        config.setJdbcUrl("jdbc:h2:file:" + name + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE");
        config.setUsername("sa");
        config.setPassword("");
        config.setMaximumPoolSize(CONNECTIONS);
        return config;
    }

    private static void migrate(HikariDataSource connections) {
        Flyway.configure()
                .dataSource(connections)
                .locations("classpath:rinsebell/db/migration")
                // Flyway would by itself let an older program work on tables that a later one has changed.
                .ignoreMigrationPatterns(new String[0])
                .load()
                .migrate();
    }

    Jdbi jdbi() {
        return jdbi;
    }

    /** Writes what is still in memory and forces the file to disk. */
    @Override
    public void close() {
        connections.close();
    }
}
