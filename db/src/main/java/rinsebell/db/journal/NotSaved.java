package rinsebell.db.journal;

/** The disk did not take a batch. Nothing of it counts, the journal is as it was, and the next batch may be tried. */
public final class NotSaved extends Exception {

    private static final long serialVersionUID = 1;

    NotSaved(Throwable cause) {
        super("the journal could not be written: " + cause.getMessage(), cause);
    }
}
