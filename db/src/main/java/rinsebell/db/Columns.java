package rinsebell.db;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.ClientId;

/** How values of the floor stand in columns; null stays null. */
final class Columns {

    private Columns() {}

    static @Nullable Long ms(@Nullable Instant instant) {
        return instant == null ? null : instant.toEpochMilli();
    }

    static @Nullable String name(@Nullable Enum<?> constant) {
        return constant == null ? null : constant.name();
    }

    static @Nullable Long number(@Nullable StaffId staff) {
        return staff == null ? null : staff.value();
    }

    static @Nullable Long number(@Nullable ClientId client) {
        return client == null ? null : client.value();
    }

    static @Nullable String decision(@Nullable CheckDecision decision) {
        return decision == null ? null : decision instanceof CheckDecision.Rinse ? "RINSE" : "LOOK_AGAIN";
    }

    static @Nullable Long again(@Nullable CheckDecision decision) {
        return decision instanceof CheckDecision.LookAgain again ? again.after().toMillis() : null;
    }

    static @Nullable Long maybeLong(ResultSet row, String column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? null : value;
    }

    static @Nullable Instant maybeInstant(ResultSet row, String column) throws SQLException {
        Long ms = maybeLong(row, column);
        return ms == null ? null : Instant.ofEpochMilli(ms);
    }

    static <E extends Enum<E>> @Nullable E maybe(Class<E> type, ResultSet row, String column) throws SQLException {
        String name = row.getString(column);
        return name == null ? null : Enum.valueOf(type, name);
    }
}
