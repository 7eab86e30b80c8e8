package rinsebell.web.form;

import java.time.Instant;
import java.util.function.Function;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.client.ClientBook;

/**
 * What a form is read against.
 *
 * @param floor as it stands
 * @param texts labels and names; empty for one that was erased
 * @param now the instant of the press
 * @param id the number in the address, of a visit, bowl, fact, product or member of staff; 0 where the address has none
 * @param clients the records that a visit may be linked to
 */
public record Target(Floor floor, Function<TextId, String> texts, Instant now, long id, ClientBook clients) {}
