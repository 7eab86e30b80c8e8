package rinsebell.db;

import rinsebell.floor.Ledger.Entry;

/**
 * A press that was answered before.
 *
 * @param device which screen it came from; empty when not known
 * @param payloadHash what was asked, as a hash
 * @param outcome the answer, as the process that gave it wrote it
 */
public record AnsweredPress(String device, String payloadHash, String outcome) {

    static AnsweredPress of(Entry entry) {
        return new AnsweredPress(entry.device(), entry.payloadHash(), entry.outcome());
    }
}
