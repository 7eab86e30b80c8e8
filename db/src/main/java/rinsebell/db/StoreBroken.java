package rinsebell.db;

/** Journal and database do not belong together; nothing was changed. A person has to look. */
public final class StoreBroken extends RuntimeException {

    private static final long serialVersionUID = 1;

    StoreBroken(String reason) {
        super(reason);
    }
}
