package rinsebell.web.form;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.visit.VisitId;

/** Reads what is typed about a client's record. Records are no facts of the floor, so that they can be erased. */
public final class ClientForms {
    /** The resource that records are found under. */
    public static final String CLIENTS = "clients";

    /** The press that notes a test or a reaction. */
    public static final String NOTE = "note";

    /** The press that erases a record. */
    public static final String ERASE = "erase";

    private ClientForms() {}

    /**
     * A record that begins.
     *
     * @param label what the salon calls them
     * @param visit whose visit it is linked to at once; null for nobody's
     */
    public record Begun(String label, @Nullable VisitId visit) {}

    public static Checked<Begun> begun(Target target, Fields fields) {
        var entries = new Entries(target, fields);
        var label = entries.neededText("label", Entries.LONGEST_LABEL);
        // A page begins and links in one press; a program has a press for each.
        var visit = entries.everyEntryCounts() ? null : EntryHeads.visitOrNull(entries, "visit");
        return new Checked<>(new Begun(label, visit), entries.errors());
    }

    /** A test or reaction; without a date it is of today. */
    public static Checked<ClientNote> note(Target target, Fields fields) {
        var entries = new Entries(target, fields);
        var kind = entries.neededChoice("kind", ClientNote.Kind.class);
        var today = target.floor().salon().dayOf(target.now());
        var on = EntryTimes.date(entries, "on").orElse(today);
        if (on.isAfter(today)) {
            entries.fault("on", Fault.STILL_TO_COME);
        }
        return new Checked<>(new ClientNote(kind, on.isAfter(today) ? LocalDate.EPOCH : on), entries.errors());
    }

    /** A press that is only its address: a program that says more means something else. */
    public static List<FieldError> nothingElse(Fields fields) {
        return fields.names().stream()
                .map(name -> new FieldError(name, Fault.NOT_A_FIELD, List.of()))
                .toList();
    }
}
