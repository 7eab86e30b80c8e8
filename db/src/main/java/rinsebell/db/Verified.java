package rinsebell.db;

import java.util.List;
import rinsebell.db.journal.JournalMark;

/**
 * What a data folder was found to hold.
 *
 * @param presses how many the journal has
 * @param end the place behind the last of them, whose hash stands for all before it
 * @param behind how many facts the database has not taken yet, which the next start brings in; 0 as a rule
 * @param steps how many rows the trail has
 * @param copies how many copies were held against the journal
 * @param faults what is not as the program wrote it, in sentences; none if all is well
 */
public record Verified(long presses, JournalMark end, long behind, long steps, int copies, List<String> faults) {
    public Verified {
        faults = List.copyOf(faults);
    }

    public boolean isSound() {
        return faults.isEmpty();
    }
}
