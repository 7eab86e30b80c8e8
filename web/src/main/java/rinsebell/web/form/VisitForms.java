package rinsebell.web.form;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Command;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitEvent;

/** Presses about a client's stay: welcome, gate, where and with whom. */
final class VisitForms {
    static final String VISITS = "visits";

    private VisitForms() {}

    static void enter(Presses presses) {
        presses.enter(VISITS, Presses.PLAIN, PressForm.asking(VisitForms::welcome));
        presses.enter(VISITS, "gate", PressForm.asking(VisitForms::gate));
        presses.enter(VISITS, "move", reporting(VisitForms::move));
        presses.enter(VISITS, "hand-over", reporting(VisitForms::handOver));
        presses.enter(VISITS, "label", PressForm.asking(VisitForms::label));
        presses.enter(VISITS, "client", reporting(entries -> new StayEvent.ClientLinked(client(entries))));
        presses.enter(VISITS, "services", reporting(ServiceForm::listed));
        presses.enter(
                VISITS,
                "service-begin",
                reporting(entries -> new StayEvent.ServiceBegan(ServiceForm.service(entries))));
        presses.enter(
                VISITS, "service-end", reporting(entries -> new StayEvent.ServiceEnded(ServiceForm.service(entries))));
        presses.enter(VISITS, "end-told", reporting(ServiceForm::told));
        presses.enter(VISITS, "turn", PressForm.asking(VisitForms::turn));
        presses.enter(VISITS, "leave", reporting(entries -> new StayEvent.Left()));
    }

    /** Reads one event on a head. */
    interface Event {
        VisitEvent read(Entries entries);
    }

    /** A form that reports one event, with a note where one was typed. */
    static PressForm reporting(Event event) {
        return PressForm.asking(entries ->
                Report.of(EntryHeads.visit(entries), event.read(entries)).with(entries.note()));
    }

    private static Command welcome(Entries entries) {
        var arrived = new StayEvent.Arrived(
                EntryPlaces.needed(entries, "place"),
                entries.staff("stylist").orElse(null),
                entries.staff("helper").orElse(null),
                client(entries));
        var label = entries.neededText("label", Entries.LONGEST_LABEL);
        return new Welcome(arrived, label, answers(entries), ServiceForm.some(entries));
    }

    private static Command gate(Entries entries) {
        var answers = answers(entries);
        if (answers.equals(Gate.UNANSWERED)) {
            entries.needed("scalp", Optional.empty(), answers);
        }
        return Report.of(EntryHeads.visit(entries), new StayEvent.GateAnswered(answers))
                .with(entries.note());
    }

    static Gate answers(Entries entries) {
        return new Gate(
                skinTest(entries),
                entries.choice("scalp", Gate.Scalp.class).orElse(null),
                yesNo(entries, "earlierReaction"),
                entries.choice("metal", Gate.Metal.class).orElse(null),
                yesNo(entries, "under16"));
    }

    private static Gate.@Nullable YesNo yesNo(Entries entries, String field) {
        return entries.yesNo(field)
                .map(yes -> yes ? Gate.YesNo.YES : Gate.YesNo.NO)
                .orElse(null);
    }

    /** A test that was done needs its date, or nobody can tell whether it still counts. */
    private static Gate.@Nullable SkinTest skinTest(Entries entries) {
        var applied = EntryTimes.date(entries, "skinTestOn");
        var result = entries.choice("skinTest", Gate.SkinTest.Result.class);
        if (result.filter(said -> said != Gate.SkinTest.Result.NONE).isPresent()) {
            var on = entries.needed("skinTestOn", applied, java.time.LocalDate.EPOCH);
            return new Gate.SkinTest(result.get(), on);
        }
        return result.map(none -> Gate.SkinTest.NOT_DONE).orElse(null);
    }

    private static VisitEvent move(Entries entries) {
        return new StayEvent.Moved(EntryPlaces.needed(entries, "place"));
    }

    private static VisitEvent handOver(Entries entries) {
        return new StayEvent.HandedOver(
                entries.staff("stylist").orElse(null), entries.staff("helper").orElse(null));
    }

    private static Command label(Entries entries) {
        var label = entries.neededText("label", Entries.LONGEST_LABEL);
        return Report.of(EntryHeads.visit(entries), new StayEvent.Relabelled()).with(label);
    }

    /** Nothing chosen is nothing pinned. */
    private static Command turn(Entries entries) {
        var visit = EntryHeads.visit(entries);
        var basin = EntryPlaces.basin(entries, "basin").map(Place.Basin::number).orElse(null);
        var before = EntryHeads.visitOrNull(entries, "before");
        return new OnDay(
                basin == null && before == null
                        ? new DayEvent.TurnUnpinned(visit)
                        : new DayEvent.TurnPinned(visit, basin, before));
    }

    private static @Nullable ClientId client(Entries entries) {
        return entries.number("client")
                .map(ClientId::new)
                .flatMap(id -> entries.known("client", entries.card(id).map(ClientCard::id), Fault.NOT_KNOWN))
                .orElse(null);
    }
}
