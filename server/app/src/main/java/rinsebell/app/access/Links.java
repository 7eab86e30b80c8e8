package rinsebell.app.access;

import java.util.List;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.board.Moment;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.TrailTelling;
import rinsebell.web.view.Press;

/** The way from one page about who may come in to the others. */
final class Links {
    private Links() {}

    static Part part(AccessTelling telling, Moment moment) {
        return telling.links(
                "rights.links",
                List.of(
                        Press.opens(moment.say("devices.title"), "", AccessTelling.DEVICES),
                        Press.opens(moment.say("pins.title"), "", AccessTelling.PINS),
                        Press.opens(moment.say("rights.title"), "", AccessTelling.RIGHTS),
                        Press.opens(moment.say("trail.title"), "", TrailTelling.PAGE)));
    }
}
