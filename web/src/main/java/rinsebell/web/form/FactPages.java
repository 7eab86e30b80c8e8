package rinsebell.web.form;

import java.util.List;
import rinsebell.floor.Fact;
import rinsebell.web.view.Field;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;

/** Pages that set facts right. */
final class FactPages {
    private static final String DAY = "/day";

    private FactPages() {}

    static void enter(FormPages pages) {
        pages.enter(FactForms.FACTS, "set-back", Nav.DAY, FactPages::setBack);
        pages.enter(FactForms.FACTS, "withdraw", Nav.DAY, FactPages::withdraw);
    }

    private static String at(PageAsk ask, String press) {
        return "/facts/" + ask.id() + "/" + press;
    }

    private static Form setBack(PageAsk ask) {
        var stands = ask.moment().floor().standing(ask.id());
        return new FormDraft(ask, "facts.set-back")
                .group(what(ask))
                .plain(
                        Field.Kind.TIME,
                        "at",
                        ask.say("field.at"),
                        stands.map(fact -> clock(ask, fact)).orElse(""))
                .list("by", Choices.recording(ask), "")
                .form(at(ask, "set-back"), DAY);
    }

    /** A field for clock time takes the 24-hour clock, whatever the salon shows. */
    private static String clock(PageAsk ask, Fact fact) {
        return new rinsebell.web.TimeStyle(ask.salon().zone(), false).clock(fact.happened());
    }

    private static String what(PageAsk ask) {
        return ask.moment()
                .floor()
                .standing(ask.id())
                .map(fact -> new FactRows(ask.moment()).telling(fact))
                .orElse("");
    }

    /** Names everything that hangs on it: all of it goes, or nothing does. */
    private static Form withdraw(PageAsk ask) {
        var floor = ask.moment().floor();
        var along = floor.hangingOn(ask.id()).stream()
                .flatMap(seq -> floor.standing(seq).stream())
                .toList();
        var draft = new FormDraft(ask, "facts.withdraw").group(titled(ask, along));
        along.forEach(fact -> draft.hidden("along", Choices.number(fact.seq())));
        draft.list("by", Choices.recording(ask), "");
        return draft.form(at(ask, "withdraw"), DAY);
    }

    private static String titled(PageAsk ask, List<Fact> along) {
        var rows = new FactRows(ask.moment());
        var all = along.stream().map(rows::telling).toList();
        return along.isEmpty() ? what(ask) : ask.say("form.facts.withdraw.along", what(ask), String.join("; ", all));
    }
}
