package rinsebell.db.codec;

/** Something that was stored is not what this version of the program knows how to read. */
public final class UnreadableFact extends RuntimeException {

    private static final long serialVersionUID = 1;

    public UnreadableFact(String reason) {
        super(reason);
    }

    UnreadableFact(String reason, Throwable cause) {
        super(reason, cause);
    }
}
