package rinsebell.db;

/**
 * The database can't be asked or written just now: the disk is full, or does not answer. What is in it is safe, and it
 * is tried again by itself each time somebody asks. Its message holds nothing that was read or written.
 */
public final class DatabaseAway extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** @param cause why it can't */
    public DatabaseAway(Throwable cause) {
        super("the database can't be used just now (" + Causes.told(cause) + ")", cause);
    }
}
