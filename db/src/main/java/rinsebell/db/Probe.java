package rinsebell.db;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.h2.api.ErrorCode;

/**
 * Reads a database file from end to end and changes nothing. H2 begins anew, without a word, in a file of which only
 * its beginning is left; and in a file that lacks a part it writes before it comes to that part.
 */
final class Probe {

    /** H2 would have to write something into a file that holds nothing of a database but its name. */
    private static final Set<Integer> HOLDS_NOTHING = Set.of(ErrorCode.DATABASE_IS_READ_ONLY);

    private Probe() {}

    /**
     * Reads all tables.
     *
     * @param name the file's path without {@code .mv.db}
     * @throws DatabaseUnreadable if a part of it is missing or damaged
     * @throws FolderInUse if another process has it open
     * @throws IOException if the system refused something, which says nothing about the file
     */
    static void read(Path name) throws IOException, DatabaseUnreadable {
        try (Connection connection = DriverManager.getConnection(
                Database.address(name) + ";ACCESS_MODE_DATA=r;IFEXISTS=TRUE", Database.USER, "")) {
            List<String> tables = tables(connection);
            if (tables.isEmpty()) {
                throw new DatabaseUnreadable("the database file holds no tables");
            }
            for (String table : tables) {
                scan(connection, table);
            }
        } catch (SQLException e) {
            throw unreadable(name, e);
        }
    }

    private static DatabaseUnreadable unreadable(Path name, SQLException e) throws IOException {
        if (Causes.haveCode(e, HOLDS_NOTHING)) {
            return new DatabaseUnreadable("the database file was cut off near its beginning");
        }
        Database.refuseInUse(name, e);
        Database.refusePassing(e);
        return new DatabaseUnreadable(e);
    }

    private static List<String> tables(Connection connection) throws SQLException {
        List<String> names = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("""
                        select table_name
                        from information_schema.tables
                        where table_schema = 'PUBLIC'
                          and table_type = 'BASE TABLE'
                        """)) {
            while (rows.next()) {
                names.add(rows.getString("table_name"));
            }
        }
        return names;
    }

    /** A plain count knows its answer without reading a row. */
    private static void scan(Connection connection, String table) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("""
                    select count(*)
                    from "%s"
                    where random() < 2
                    """.formatted(table));
        }
    }
}
