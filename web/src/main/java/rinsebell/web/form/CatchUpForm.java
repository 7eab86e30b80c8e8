package rinsebell.web.form;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rinsebell.floor.Command;
import rinsebell.floor.command.CatchUp;
import rinsebell.floor.command.CatchUp.Missed;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.WorkEvent;
import rinsebell.web.view.Field;
import rinsebell.web.view.Form;

/**
 * What is usually missed while no server ran, for every head on one page: a time beside each thing, and nothing where
 * it did not happen. A field is named by what happened and the number of the application or visit.
 */
final class CatchUpForm {
    private static final String LAST_ON = "lastOn.";
    private static final String STRAND = "strand.";
    private static final String SCALP = "scalp.";
    private static final String FINDING = "finding.";
    private static final String RINSED = "rinsed.";
    private static final String LEFT = "left.";

    private CatchUpForm() {}

    static Form form(PageAsk ask, String address) {
        var draft = new FormDraft(ask, "day.caught-up");
        ask.moment().floor().openVisits().forEach(visit -> head(draft, ask, visit));
        return draft.group(ask.say("form.when"))
                .list("by", Choices.recording(ask), "")
                .form(address, "/");
    }

    private static void head(FormDraft draft, PageAsk ask, Visit visit) {
        var id = visit.id().value();
        draft.group(ask.moment().place(visit.place()) + " · " + ask.moment().label(visit));
        for (var one : visit.onHair()) {
            var area = ask.moment().say(one.area());
            if (one.lastOn() == null) {
                time(draft, LAST_ON + one.id().value(), ask.say("field.missed.last_on", area));
            }
            time(draft, STRAND + one.id().value(), ask.say("field.missed.strand", area));
        }
        time(draft, SCALP + id, ask.say("field.missed.scalp"));
        if (!visit.onHair().isEmpty()) {
            time(draft, RINSED + id, ask.say("field.missed.rinsed"));
        }
        time(draft, LEFT + id, ask.say("field.missed.left"));
        draft.choice(FINDING + id, ask.say("field.missed.finding"), ScalpCheck.Finding.class, null);
    }

    private static void time(FormDraft draft, String name, String label) {
        draft.plain(Field.Kind.TIME, name, label, "");
    }

    static Command read(Entries entries) {
        var missed = entries.floor().openVisits().stream()
                .flatMap(visit -> head(entries, visit).stream())
                .toList();
        return new CatchUp(missed);
    }

    private static List<Missed> head(Entries entries, Visit visit) {
        var missed = new ArrayList<Missed>();
        for (var one : visit.onHair()) {
            at(entries, LAST_ON, one.id().value()).ifPresent(at -> missed.add(missed(visit, lastOn(one), at)));
            at(entries, STRAND, one.id().value()).ifPresent(at -> missed.add(missed(visit, looked(one), at)));
        }
        scalp(entries, visit).ifPresent(missed::add);
        if (!visit.onHair().isEmpty()) {
            at(entries, RINSED, visit.id().value()).ifPresent(at -> missed.add(missed(visit, rinsed(visit), at)));
        }
        at(entries, LEFT, visit.id().value()).ifPresent(at -> missed.add(missed(visit, new StayEvent.Left(), at)));
        return missed;
    }

    private static Optional<Instant> at(Entries entries, String what, long id) {
        return EntryTimes.at(entries, what + id);
    }

    /** A look at the scalp says what was seen; without a time nobody looked. */
    private static Optional<Missed> scalp(Entries entries, Visit visit) {
        var id = visit.id().value();
        var finding = entries.choice(FINDING + id, ScalpCheck.Finding.class);
        var at = at(entries, SCALP, id);
        if (at.isEmpty() && finding.isEmpty()) {
            return Optional.empty();
        }
        var when = entries.needed(SCALP + id, at, entries.now());
        var seen = entries.needed(FINDING + id, finding, ScalpCheck.Finding.FINE);
        return Optional.of(missed(visit, new LookEvent.ScalpChecked(seen, null), when));
    }

    private static VisitEvent lastOn(Application one) {
        return new WorkEvent.LastOn(one.id());
    }

    private static VisitEvent looked(Application one) {
        return new LookEvent.StrandChecked(one.id(), StrandFinding.NOTHING_SAID, null);
    }

    private static VisitEvent rinsed(Visit visit) {
        var all = visit.onHair().stream().map(Application::id).collect(Collectors.toUnmodifiableSet());
        return new WorkEvent.TakenOff(all, Ending.How.RINSED);
    }

    private static Missed missed(Visit visit, VisitEvent event, Instant at) {
        return new Missed(visit.id(), event, at);
    }
}
