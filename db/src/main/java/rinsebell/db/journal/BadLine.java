package rinsebell.db.journal;

/** Bytes that are not a line the journal wholly wrote: torn or damaged, which its neighbours decide. */
final class BadLine extends Exception {

    private static final long serialVersionUID = 1;

    BadLine(String reason) {
        super(reason, null, false, false);
    }

    String reason() {
        return String.valueOf(getMessage());
    }
}
