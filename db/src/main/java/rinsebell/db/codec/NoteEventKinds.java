package rinsebell.db.codec;

import java.util.List;
import java.util.Set;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.BellShelved;
import rinsebell.floor.Correction.SetBack;
import rinsebell.floor.Correction.Withdrawn;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;

/** What is said about other facts and about bells, in whatever stream they stand. */
final class NoteEventKinds {

    static final List<EventKind<?>> ALL = List.of(
            EventKind.first(
                    "withdrawn",
                    Withdrawn.class,
                    (event, out) -> out.number("of", event.of()),
                    in -> new Withdrawn(in.number("of"))),
            EventKind.first(
                    "set-back",
                    SetBack.class,
                    (event, out) -> out.number("of", event.of()).instant("to_ms", event.to()),
                    in -> new SetBack(in.number("of"), in.instant("to_ms"))),
            EventKind.first(
                    "bell-acknowledged",
                    BellAcknowledged.class,
                    (event, out) -> out.object("bell", event.bell(), NoteEventKinds::writeBell)
                            .constant("step", event.step())
                            .constant("priority", event.priority())
                            .constants("reasons", event.reasons())
                            .flag("explained", event.explained()),
                    in -> new BellAcknowledged(
                            in.object("bell", NoteEventKinds::readBell),
                            in.constant("step", Stage.Step.class),
                            in.constant("priority", Priority.class),
                            Set.copyOf(in.maybeConstants("reasons", ReasonCode.class)),
                            in.maybeFlag("explained"))),
            EventKind.first(
                    "bell-shelved",
                    BellShelved.class,
                    (event, out) -> out.object("bell", event.bell(), NoteEventKinds::writeBell)
                            .duration("span", event.span())
                            .constant("why", event.why()),
                    in -> new BellShelved(
                            in.object("bell", NoteEventKinds::readBell),
                            in.duration("span"),
                            in.constant("why", BellShelved.Why.class))));

    private NoteEventKinds() {}

    private static void writeBell(BellKey bell, Writing out) {
        out.constant("kind", bell.kind()).number("subject", bell.subject()).number("anchor", bell.anchor());
    }

    private static BellKey readBell(Reading in) {
        return new BellKey(in.constant("kind", BellKind.class), in.number("subject"), in.number("anchor"));
    }
}
