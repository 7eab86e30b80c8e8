package rinsebell.web.form;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.BellShelved;
import rinsebell.floor.bell.Bell;
import rinsebell.web.Codes;
import rinsebell.web.board.BellBoard;
import rinsebell.web.form.FormDraft.Choice;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;

/** Pages on which somebody says more to a bell than that it was heard. */
final class BellPages {
    private static final String BACK = "/bells";
    private static final List<Long> MINUTES = List.of(1L, 2L, 3L, 5L, 10L);
    private static final String USUAL = "3";

    private BellPages() {}

    static void enter(FormPages pages) {
        pages.enter(BellForms.BELLS, "acknowledge", Nav.FLOOR, BellPages::acknowledge);
        pages.enter(BellForms.BELLS, "shelve", Nav.FLOOR, BellPages::shelve);
    }

    private static Form acknowledge(PageAsk ask) {
        return about(ask, "bells.acknowledge").who().form("/bells/acknowledge", BACK);
    }

    private static Form shelve(PageAsk ask) {
        var longest = ask.salon().policy().ringing().longestShelved();
        var choices = MINUTES.stream()
                .filter(minutes -> Duration.ofMinutes(minutes).compareTo(longest) <= 0)
                .map(minutes -> new Choice(Long.toString(minutes), ask.say("choice.minutes", minutes)))
                .toList();
        return about(ask, "bells.shelve")
                .tiles("minutes", choices, USUAL)
                .choice("why", BellShelved.Why.class, BellShelved.Why.HANDS_FULL)
                .who()
                .form("/bells/shelve", BACK);
    }

    /** Says which bell it is about, and keeps it. */
    private static FormDraft about(PageAsk ask, String key) {
        var draft = new FormDraft(ask, key).group(told(ask));
        Stream.of("kind", "subject", "anchor").forEach(field -> draft.hidden(field, ask.value(field, "")));
        return draft;
    }

    private static String told(PageAsk ask) {
        return ask.moment().bells().stream()
                .filter(bell -> isAsked(ask, bell))
                .findFirst()
                .map(bell -> new BellBoard(ask.moment()).told(bell))
                .orElse("");
    }

    private static boolean isAsked(PageAsk ask, Bell bell) {
        var key = bell.key();
        return Optional.of(Codes.of(key.kind())).equals(ask.typed().first("kind"))
                && Long.toString(key.subject())
                        .equals(ask.typed().first("subject").orElse(""))
                && Long.toString(key.anchor())
                        .equals(ask.typed().first("anchor").orElse(""));
    }
}
