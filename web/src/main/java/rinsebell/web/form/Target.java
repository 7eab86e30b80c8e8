package rinsebell.web.form;

import java.time.Instant;
import rinsebell.floor.Floor;

/**
 * What a form is read against.
 *
 * @param floor as it stands
 * @param now the instant of the press
 * @param id the number in the address, of a visit, bowl, fact, product or member of staff; 0 where the address has none
 */
public record Target(Floor floor, Instant now, long id) {}
