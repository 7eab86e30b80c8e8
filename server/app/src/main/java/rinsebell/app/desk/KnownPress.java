package rinsebell.app.desk;

import rinsebell.floor.Floor;

/**
 * A press that was answered before.
 *
 * @param payloadHash what was asked, as a hash
 * @param outcome what it was answered
 */
public record KnownPress(String payloadHash, Outcome outcome) {

    /** The same press again is answered the same; another under its id is not answered at all. */
    Answer again(String askedHash, Floor floor) {
        return payloadHash.equals(askedHash) ? new Answer.Decided(outcome, floor) : new Answer.OtherPress();
    }
}
