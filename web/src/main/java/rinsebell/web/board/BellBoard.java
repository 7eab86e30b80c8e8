package rinsebell.web.board;

import java.util.List;
import rinsebell.floor.bell.Bell;
import rinsebell.web.view.BellList;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.Fragment;

/** Every bell that rings or asks, for staff. */
public final class BellBoard {
    private final Moment moment;
    private final BellTelling telling;

    public BellBoard(Moment moment) {
        this.moment = moment;
        this.telling = new BellTelling(moment, false);
    }

    public List<Fragment> fragments() {
        return List.of(strip(), list());
    }

    public BellStrip strip() {
        return telling.strip(moment.bells());
    }

    /** Where and what, such as "chair 3 · strand check". */
    public String told(Bell bell) {
        return telling.told(bell);
    }

    public BellList list() {
        return new BellList(
                telling.all(moment.bells()),
                moment.say("bells.gone"),
                telling.gone(moment.around().returned()),
                moment.say("bells.none"));
    }
}
