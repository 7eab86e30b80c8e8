package rinsebell.db.journal;

/** Is handed every whole press of a journal, oldest first. */
@FunctionalInterface
public interface JournalReader {

    /** Looks at nothing. */
    JournalReader NONE = (press, after) -> {};

    /**
     * Takes one press.
     *
     * @param after the place in the journal behind this press
     */
    void press(JournalPress press, JournalMark after);
}
