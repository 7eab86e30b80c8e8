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

    /**
     * Is told once that everything was read. Nothing has been changed by then, and nothing will be if this throws.
     *
     * @param found what the journal holds, and what is going to be cut off its end
     */
    default void end(Recovered found) {}
}
