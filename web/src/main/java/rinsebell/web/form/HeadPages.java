package rinsebell.web.form;

import static rinsebell.web.form.VisitPages.at;
import static rinsebell.web.form.VisitPages.back;
import static rinsebell.web.form.VisitPages.draft;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.web.form.FormDraft.Choice;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;

/** Pages about what is done to a head, and what is seen and felt there. */
final class HeadPages {
    private static final List<Integer> AGAIN_MINUTES = List.of(3, 5, 10);

    private HeadPages() {}

    static void enter(FormPages pages) {
        page(pages, "put-on", HeadPages::putOn);
        page(pages, "already-on", (ask, draft) -> where(draft));
        Stream.of("last-on", "foils-out", "emulsified").forEach(press -> page(pages, press, HeadPages::which));
        page(pages, "cover", (ask, draft) -> which(ask, draft).choice("cover", Cover.class, null));
        page(pages, "plan", (ask, draft) -> which(ask, draft).number("planned", ""));
        page(pages, "heat-on", (ask, draft) -> draft.choice("heat", Heat.class, null));
        page(pages, "rinse", (ask, draft) -> all(ask, draft.tiles("basin", Choices.basins(ask), "")));
        page(pages, "wipe-off", HeadPages::all);
        Stream.of("heat-off", "towel-dried", "stop").forEach(press -> page(pages, press, (ask, draft) -> draft));
        page(pages, "strand", HeadPages::strand);
        page(pages, "scalp", HeadPages::scalp);
        page(pages, "lift", (ask, draft) -> draft.yesNo("reached", ask.say("field.reached"), null));
        page(pages, "discomfort", (ask, draft) -> draft.choice("grade", Complaint.Grade.class, null));
    }

    private interface Asks {
        FormDraft add(PageAsk ask, FormDraft draft);
    }

    private static void page(FormPages pages, String press, Asks asks) {
        pages.enter(VisitForms.VISITS, press, Nav.FLOOR, ask -> form(ask, press, asks));
    }

    private static Form form(PageAsk ask, String press, Asks asks) {
        return asks.add(ask, draft(ask, press)).whenAndWho().form(at(ask, press), back(ask));
    }

    private static FormDraft putOn(PageAsk ask, FormDraft draft) {
        var bowls = Choices.bowls(ask);
        var first = bowls.isEmpty() ? "" : bowls.get(0).value();
        return where(draft.tiles("bowl", bowls, first))
                .number("planned", "")
                .preview(Judging.preview(ask, HeadForms.PUT_ON, at(ask, "put-on")));
    }

    private static FormDraft where(FormDraft draft) {
        return draft.choice("area", Area.class, null)
                .choice("zone", Zone.class, null)
                .choice("cover", Cover.class, Cover.OPEN);
    }

    /** One of what is on; the only one is chosen beforehand. */
    private static FormDraft which(PageAsk ask, FormDraft draft) {
        var on = Choices.applications(ask);
        return draft.tiles("application", on, on.size() == 1 ? on.get(0).value() : "");
    }

    /** Some of what is on; all of it is chosen beforehand. */
    private static FormDraft all(PageAsk ask, FormDraft draft) {
        var on = Choices.applications(ask);
        return draft.some("applications", on, on.stream().map(Choice::value).toList());
    }

    /** What is decided comes first: with the gloves on, that alone is often all that is touched. */
    private static FormDraft strand(PageAsk ask, FormDraft draft) {
        var levels = IntStream.rangeClosed(StrandFinding.LOWEST_LEVEL, StrandFinding.HIGHEST_LEVEL)
                .mapToObj(String::valueOf)
                .map(level -> new Choice(level, level))
                .toList();
        return decision(ask, whichIfSeveral(ask, draft))
                .tiles("level", levels, "")
                .choice("tone", StrandFinding.Tone.class, null)
                .choice("stretch", StrandFinding.Stretch.class, null)
                .choice("dryness", StrandFinding.Dryness.class, null);
    }

    /** Nobody is asked which, where only one is on. */
    private static FormDraft whichIfSeveral(PageAsk ask, FormDraft draft) {
        var on = Choices.applications(ask);
        return on.size() == 1 ? draft.hidden("application", on.get(0).value()) : which(ask, draft);
    }

    private static FormDraft scalp(PageAsk ask, FormDraft draft) {
        return decision(ask, draft.choice("finding", ScalpCheck.Finding.class, null));
    }

    private static FormDraft decision(PageAsk ask, FormDraft draft) {
        var again = AGAIN_MINUTES.stream()
                .map(minutes -> new Choice(String.valueOf(minutes), ask.say("choice.again", minutes)));
        var others = Stream.of(
                new Choice("", ask.say("choice.by_directions")), new Choice(EntryHeads.RINSE, ask.say("choice.rinse")));
        return draft.tiles("decision", Stream.concat(again, others).toList(), "");
    }
}
