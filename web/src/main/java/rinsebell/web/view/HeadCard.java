package rinsebell.web.view;

import java.util.ArrayList;
import java.util.List;

/**
 * One head in a list: whom to rinse next, or one of my clients.
 *
 * @param id of the card, from the visit
 * @param place such as "3", the chair's number, or a basin's letter
 * @param forbidden what not to do to this head, in plain words
 * @param presses what can be recorded right here
 * @param discomfort tingling, burning, hot foil; empty while nothing is on
 */
public record HeadCard(
        String id,
        String place,
        String who,
        String staff,
        Due due,
        List<String> forbidden,
        List<Press> presses,
        List<Press> discomfort,
        String href) {
    /** The same with its first press as what most people press next. */
    public HeadCard first() {
        var weighed = new ArrayList<>(presses);
        if (!weighed.isEmpty()) {
            weighed.set(0, weighed.get(0).as(Press.Weight.MAIN));
        }
        return new HeadCard(id, place, who, staff, due, forbidden, weighed, discomfort, href);
    }
}
