package rinsebell.db.journal;

/**
 * A place in the journal: behind a whole press.
 *
 * @param lines how many lines the journal has up to here
 * @param hash SHA-256 of the last of them, 64 hexadecimal digits; zeros while there is none
 */
public record JournalMark(long lines, String hash) {

    /** The place before the first line. */
    public static final JournalMark START = new JournalMark(0, "0".repeat(64));
}
