package rinsebell.db;

/**
 * What lies in the data folder can't be worked on: journal and database do not belong together, or a later version of
 * the program wrote them. Nothing was lost; a person has to look.
 */
public final class StoreBroken extends RuntimeException {

    private static final long serialVersionUID = 1;

    StoreBroken(String reason) {
        super(reason);
    }

    StoreBroken(String reason, Throwable cause) {
        super(reason, cause);
    }
}
