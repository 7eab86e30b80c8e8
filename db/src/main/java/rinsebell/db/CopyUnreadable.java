package rinsebell.db;

/** A copy can't be used: it is damaged, no copy at all, or not of this salon. The message is the reason, for people. */
public final class CopyUnreadable extends Exception {

    private static final long serialVersionUID = 1;

    CopyUnreadable(String reason) {
        super(reason);
    }

    CopyUnreadable(String reason, Throwable cause) {
        super(reason, cause);
    }
}
