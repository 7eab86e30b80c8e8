package rinsebell.db;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.h2.api.ErrorCode;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.StatementExceptions;
import org.jdbi.v3.core.statement.StatementExceptions.MessageRendering;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** The H2 file, with its tables brought up to this version of the program. */
final class Database implements AutoCloseable {

    /** The floor's writer, a few people looking things up, and one to spare. */
    private static final int CONNECTIONS = 4;

    /** What H2 answers when a file is no database of its, or can't be read to the end. */
    private static final Set<Integer> DAMAGE = Set.of(
            ErrorCode.FILE_CORRUPTED_1, ErrorCode.IO_EXCEPTION_1, ErrorCode.IO_EXCEPTION_2, ErrorCode.GENERAL_ERROR_1);

    /** What it answers when the machine has run out of something, which says nothing about the file. */
    private static final Set<Integer> PASSING =
            Set.of(ErrorCode.OUT_OF_MEMORY, ErrorCode.DATABASE_IS_READ_ONLY, ErrorCode.LOCK_TIMEOUT_1);

    private static final Set<Integer> IN_USE = Set.of(ErrorCode.DATABASE_ALREADY_OPEN_1);

    /**
     * What it answers on a connection that was there before H2 closed its file, which it does when a write fails. The
     * next connection opens the file again, and a pool would not find out for hours that the old ones are dead.
     */
    private static final Set<Integer> CLOSED = Set.of(
            ErrorCode.DATABASE_IS_CLOSED,
            ErrorCode.DATABASE_CALLED_AT_SHUTDOWN,
            ErrorCode.CONNECTION_BROKEN_1,
            ErrorCode.OBJECT_CLOSED);

    /** A file that opens does so at once, and the floor waits meanwhile. */
    private static final long PATIENCE_MILLIS = 1_000;

    static final String USER = "sa";

    private final Path name;
    private final Shut shut = new Shut();
    private final Jdbi jdbi;
    private volatile HikariDataSource connections;

    private Database(Path name, HikariDataSource connections) {
        this.name = name;
        this.connections = connections;
        this.jdbi = Jdbi.create(() -> this.connections.getConnection());
        // A log must not quote what somebody typed.
        jdbi.getConfig(StatementExceptions.class).setMessageRendering(MessageRendering.NONE);
    }

    /**
     * Opens the database in a file and creates it if need be.
     *
     * @param name the file's path without {@code .mv.db}
     * @throws DatabaseUnreadable if the file is no database, or a damaged one
     * @throws StoreBroken if its tables are not of this version of the program and can't be brought up to it
     * @throws IOException if the disk is full or the file may not be used, which leaves it open whether it is sound
     * @throws FolderInUse if another process has it open
     */
    static Database open(Path name) throws IOException, DatabaseUnreadable {
        try {
            return migrated(name, new HikariDataSource(config(name)));
        } catch (RuntimeException e) {
            refuseInUse(name, e);
            refusePassing(e);
            if (Causes.haveCode(e, DAMAGE)) {
                throw new DatabaseUnreadable(e);
            }
            throw e instanceof FlywayException ? strange(e) : e;
        }
    }

    private static StoreBroken strange(RuntimeException cause) {
        return new StoreBroken(
                "the database's tables are not those of this version of the program: " + cause.getMessage(), cause);
    }

    private static Database migrated(Path name, HikariDataSource connections) {
        try {
            migrate(connections);
            return new Database(name, connections);
        } catch (RuntimeException e) {
            connections.close();
            throw e;
        }
    }

    /** @throws FolderInUse if another process has the file open */
    static void refuseInUse(Path name, Exception thrown) {
        if (Causes.haveCode(thrown, IN_USE)) {
            throw new FolderInUse(Objects.requireNonNullElse(name.getParent(), name), "");
        }
    }

    /** @throws IOException if it was the system that refused something, which says nothing about the file */
    static void refusePassing(Exception thrown) throws IOException {
        if (isPassing(thrown)) {
            throw new IOException("the database file can't be used now: " + Causes.innermost(thrown), thrown);
        }
    }

    /** Whether the system refused something. A file that merely ends too early is damaged. */
    private static boolean isPassing(Exception thrown) {
        return Causes.haveCode(thrown, PASSING)
                || Causes.of(thrown)
                        .anyMatch(cause -> cause instanceof OutOfMemoryError
                                || (cause instanceof IOException && !(cause instanceof EOFException)));
    }

    /** Without a file of H2's own about what failed: it would quote what was written. */
    static String address(Path name) {
        return "jdbc:h2:file:" + name + ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0";
    }

    /** WRITE_DELAY=0 hands each commit to the operating system at once; the journal covers what that may still lose. */
    private static HikariConfig config(Path name) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("database");
        config.setJdbcUrl(address(name) + ";WRITE_DELAY=0");
        config.setUsername(USER);
        config.setPassword("");
        config.setMaximumPoolSize(CONNECTIONS);
        config.setConnectionTimeout(PATIENCE_MILLIS);
        return config;
    }

    /** One that can't be opened now is tried again each time somebody asks. */
    private static HikariConfig patient(HikariConfig config) {
        config.setInitializationFailTimeout(-1);
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

    /**
     * Asks or writes something.
     *
     * @throws DatabaseAway if the database can't be used just now
     */
    <T> T with(HandleCallback<T, RuntimeException> act) {
        return shut.outside(() -> reached(() -> jdbi.withHandle(act)));
    }

    /**
     * Asks or writes something, whole or not at all.
     *
     * @throws DatabaseAway if the database can't be used just now; then nothing was written
     */
    <T> T inTransaction(HandleCallback<T, RuntimeException> act) {
        return shut.outside(() -> reached(() -> jdbi.inTransaction(act)));
    }

    /**
     * Writes something, whole or not at all, without waiting while the file is being compacted.
     *
     * @throws DatabaseAway if the database can't be used just now; then nothing was written
     */
    <T> T inTransactionAtOnce(HandleCallback<T, RuntimeException> act) {
        return shut.outsideAtOnce(() -> reached(() -> jdbi.inTransaction(act)));
    }

    /**
     * Asks or writes something that must see the tables in another way than others do.
     *
     * @throws DatabaseAway if the database can't be used just now; then nothing was written
     */
    <T> T inTransaction(TransactionIsolationLevel level, HandleCallback<T, RuntimeException> act) {
        return shut.outside(() -> reached(() -> jdbi.inTransaction(level, act)));
    }

    /** Whether nobody can use it, because its file is being worked on. */
    boolean isShut() {
        return shut.isShut();
    }

    /**
     * Lets the file be worked on while nobody has it open, and opens it again, whatever came of that.
     *
     * @throws IOException if that failed, or somebody used the database for too long
     */
    void whileShut(FileWork work) throws IOException {
        shut.inside(() -> {
            connections.close();
            try {
                work.on(name);
            } finally {
                connections = new HikariDataSource(patient(config(name)));
            }
        });
    }

    /** What is done to a database's file. */
    @FunctionalInterface
    interface FileWork {

        /** @param name the file's path without {@code .mv.db} */
        void on(Path name) throws IOException;
    }

    private <T> T reached(Supplier<T> act) {
        try {
            return act.get();
        } catch (JdbiException e) {
            connections.getHikariPoolMXBean().softEvictConnections();
            // Only what found the file closed can't have done anything yet.
            if (Causes.haveCode(e, CLOSED)) {
                return again(act);
            }
            throw new DatabaseAway(e);
        }
    }

    private static <T> T again(Supplier<T> act) {
        try {
            return act.get();
        } catch (JdbiException e) {
            throw new DatabaseAway(e);
        }
    }

    /** Writes what is still in memory and forces the file to disk. */
    @Override
    public void close() {
        connections.close();
    }
}
