package rinsebell.web.board;

import java.util.List;
import rinsebell.web.view.Due;
import rinsebell.web.view.HeadCard;
import rinsebell.web.view.Press;

/** A head as a card in a list. */
final class HeadCards {
    private HeadCards() {}

    static HeadCard of(HeadTelling head, List<Press> presses) {
        return of(head, head.due(), new HeadRules(head).forbidden(), presses);
    }

    static HeadCard of(HeadTelling head, Due due, List<String> forbidden, List<Press> presses) {
        var moment = head.moment;
        return new HeadCard(
                "card-" + head.visit.id().value(),
                moment.placeSign(head.visit.place()),
                moment.label(head.visit),
                moment.staff(head.visit),
                due,
                forbidden,
                presses,
                HeadPresses.discomfort(head),
                "/visits/" + head.visit.id().value());
    }
}
