package rinsebell.db;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Set;
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
     * @throws RuntimeException if it is in use
     */
    static Database open(Path name) throws DatabaseUnreadable {
        try {
            return migrated(new HikariDataSource(config(name)));
        } catch (RuntimeException e) {
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

    private static boolean isDamage(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && DAMAGE.contains(sql.getErrorCode())) {
                return true;
            }
        }
        return false;
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
