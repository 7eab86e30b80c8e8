package rinsebell.floor;

import java.util.List;
import java.util.Map;

/** Where presses are made durable. */
public interface Ledger {
    /**
     * One press with everything it wrote.
     *
     * @param id made by whoever pressed; the same press never has two
     * @param device which screen; empty when not known
     * @param payloadHash what was asked, as a hash, so that another question under the same id is noticed
     * @param outcome the answer, in the words of the process that gave it, so that it can be given again
     * @param facts none when it was refused
     * @param texts erasable texts by the number of their fact
     */
    record Entry(
            String id, String device, String payloadHash, String outcome, List<Fact> facts, Map<Long, String> texts) {
        public Entry {
            facts = List.copyOf(facts);
            texts = Map.copyOf(texts);
        }
    }

    /**
     * Forces these presses to disk, together; when this returns they count.
     *
     * @throws NotSaved when none of them is on disk, nor will be: the floor stays as it was
     * @throws RuntimeException when it can't be told what is on disk: the process must stop and start afresh
     */
    void append(List<Entry> batch) throws NotSaved;

    /** Nothing was saved. */
    final class NotSaved extends Exception {
        private static final long serialVersionUID = 1L;

        public NotSaved(String message, Throwable cause) {
            super(message, cause);
        }
    }
}
