package rinsebell.db;

/** Nothing was restored, for a reason that the person who asked for it can mend. The message is that reason. */
public final class NotRestored extends Exception {

    private static final long serialVersionUID = 1;

    NotRestored(String reason) {
        super(reason);
    }
}
