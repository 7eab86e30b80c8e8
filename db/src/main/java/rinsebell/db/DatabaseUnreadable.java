package rinsebell.db;

/** The database file does not open, or does not hold what it says. The journal can make a new one. */
final class DatabaseUnreadable extends Exception {

    private static final long serialVersionUID = 1;

    DatabaseUnreadable(String reason) {
        super(reason);
    }

    DatabaseUnreadable(Throwable cause) {
        super("the database file would not open: " + cause.getMessage(), cause);
    }

    String reason() {
        return String.valueOf(getMessage());
    }
}
