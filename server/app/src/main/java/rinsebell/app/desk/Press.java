package rinsebell.app.desk;

import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;

/**
 * One press on its way to the floor.
 *
 * @param id made by whoever pressed; the same press never has two
 * @param device which screen; empty when not known
 * @param payloadHash what was asked, as a hash
 * @param command what is asked of the floor
 * @param asked when, by whom, as plan or fact
 */
public record Press(String id, String device, String payloadHash, Command command, Asked asked) {
    /** This press, about an instant that is possible on that floor where its own was only reckoned. */
    Press possibleOn(Floor floor) {
        return new Press(id, device, payloadHash, command, asked.possible(command, floor));
    }
}
