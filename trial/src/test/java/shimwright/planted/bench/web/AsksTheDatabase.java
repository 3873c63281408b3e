package shimwright.planted.bench.web;

import java.sql.DriverManager;
import java.sql.SQLException;

/** Planted to break a rule of the house. */
final class AsksTheDatabase {
    private AsksTheDatabase() {}

    static boolean answers() throws SQLException {
        try (var database = DriverManager.getConnection("jdbc:x")) {
            return database.isValid(1);
        }
    }
}
