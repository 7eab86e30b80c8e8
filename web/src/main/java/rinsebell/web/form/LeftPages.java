package rinsebell.web.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Left;
import rinsebell.web.Codes;
import rinsebell.web.board.LeftTelling;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;

/**
 * Where a bowl is thrown away and what is left in it is said, in one press. Every answer costs the same touch: if "nothing"
 * were nearer at hand than the others, a salon would throw nothing away on paper.
 */
final class LeftPages {
    private static final String PRESS = "throw-away";

    private LeftPages() {}

    static SheetPage page(PageAsk ask) {
        var bowl = ask.moment().floor().bowl(new BowlId(ask.id()));
        var gone = bowl.filter(Bowl::isThrownAway).isPresent();
        var title = ask.say(gone ? "left.title" : "left.ask");
        var presses = new ArrayList<>(presses(ask, ask.id()));
        if (!gone) {
            presses.add(Press.sends(ask.say("left.not_looked"), "", at(ask.id())));
        }
        return new SheetPage(
                ask.shell(title, Nav.BOWLS),
                title,
                ask.say("left.intro"),
                List.of(new Part(
                        "", bowl.map(one -> row(ask, one, List.of())).stream().toList(), presses)),
                List.of(form(ask, bowl)));
    }

    /** What an eye can tell, each in one press. */
    static List<Press> presses(PageAsk ask, long bowl) {
        return Arrays.stream(Left.Quarters.values())
                .map(quarters -> Press.sends(
                        ask.say("left." + Codes.of(quarters)),
                        "",
                        at(bowl),
                        new Press.Hidden("left", Codes.of(quarters))))
                .toList();
    }

    private static Form form(PageAsk ask, Optional<Bowl> bowl) {
        var most = bowl.filter(Bowl::isRecipeKnown).map(Bowl::mixed);
        return new FormDraft(ask, "bowls.throw-away")
                .group(ask.say("left.by_scale"))
                .number(
                        "grams",
                        most.map(grams -> ask.say(
                                        "left.grams.most", grams.amount().toPlainString()))
                                .orElse(ask.say("left.grams")),
                        "")
                .number("minutesAgo", "")
                .form(at(ask.id()), "/bowls")
                .untitled();
    }

    /** A bowl, and what was said of it. */
    static Row row(PageAsk ask, Bowl bowl, List<Press> presses) {
        var left = bowl.left();
        return new Row(
                ask.moment().clock(bowl.mixedAt()),
                Choices.bowl(ask, bowl),
                left == null || !bowl.isThrownAway() ? "" : LeftTelling.say(ask.moment(), left),
                false,
                presses);
    }

    static String at(long bowl) {
        return "/bowls/" + bowl + "/" + PRESS;
    }
}
