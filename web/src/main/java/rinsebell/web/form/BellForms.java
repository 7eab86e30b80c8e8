package rinsebell.web.form;

import rinsebell.floor.BellShelved;
import rinsebell.floor.Command;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.Shelve;
import rinsebell.floor.salon.StaffId;

/** Presses that say something to a bell: that it was heard, or that it has to wait for some minutes. */
final class BellForms {
    static final String BELLS = "bells";

    private BellForms() {}

    static void enter(Presses presses) {
        presses.enter(BELLS, "acknowledge", PressForm.asking(BellForms::acknowledge));
        presses.enter(BELLS, "shelve", PressForm.asking(BellForms::shelve));
    }

    private static Command acknowledge(Entries entries) {
        return new Acknowledge(bell(entries), entries.note());
    }

    /** Whoever puts a bell off says who they are, where the salon has named anybody. */
    private static Command shelve(Entries entries) {
        var bell = bell(entries);
        var longest = entries.floor().salon().policy().ringing().longestShelved();
        var span =
                entries.needed("minutes", entries.minutes("minutes", 1, PolicyForm.LONGEST_SHELVED_MINUTES), longest);
        if (!entries.floor().salon().working().isEmpty()) {
            entries.needed("by", entries.staff("by"), new StaffId(0));
        }
        return new Shelve(bell, span, entries.neededChoice("why", BellShelved.Why.class), entries.note());
    }

    private static BellKey bell(Entries entries) {
        var kind = entries.neededChoice("kind", BellKind.class);
        var subject = entries.needed("subject", entries.number("subject"), 0L);
        var anchor = entries.needed("anchor", entries.anchor("anchor"), 0L);
        return new BellKey(kind, subject, anchor);
    }
}
