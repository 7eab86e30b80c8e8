package rinsebell.db;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** Makes a database from a copy. */
final class CopyTables {

    private CopyTables() {}

    /**
     * A new database of this version of the program, with all that a copy holds but links that may look in: nobody knows
     * which of them were taken back since.
     *
     * @param name the path of its file without {@code .mv.db}; there must be no such file
     * @throws CopyUnreadable if the copy is damaged, holds other than it says, or comes from a later version
     * @throws IOException if the system refused something, which says nothing about the copy
     */
    static Database loaded(Path copy, Path name) throws IOException, CopyUnreadable {
        fill(copy, name);
        try {
            return checked(Database.open(name));
        } catch (DatabaseUnreadable | StoreBroken e) {
            throw new CopyUnreadable(String.valueOf(e.getMessage()), e);
        }
    }

    private static void fill(Path copy, Path name) throws IOException, CopyUnreadable {
        try (Connection connection = DriverManager.getConnection(Database.address(name), Database.USER, "")) {
            CopyScript.run(copy, connection);
        } catch (SQLException e) {
            throw new IOException("no database can be made at " + name, e);
        }
    }

    private static Database checked(Database database) throws IOException, DatabaseUnreadable {
        try {
            new Tables(database).check();
            database.with(LookInTable::clear);
            return database;
        } catch (IOException | RuntimeException | DatabaseUnreadable e) {
            database.close();
            throw e;
        }
    }
}
