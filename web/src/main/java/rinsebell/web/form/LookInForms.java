package rinsebell.web.form;

import rinsebell.floor.client.ClientBook;
import rinsebell.web.board.Moment;

/** Reads what is typed for a link that looks in. Links are no facts of the floor. */
public final class LookInForms {
    static final String NAME = "name";

    private LookInForms() {}

    /** For whom or what a link is. */
    public static Checked<String> name(Moment moment, Fields typed) {
        var target = new Target(moment.floor(), moment.texts(), moment.now(), 0, ClientBook.EMPTY);
        var entries = new Entries(target, typed);
        var name = entries.neededText(NAME, Entries.LONGEST_LABEL);
        return new Checked<>(name, entries.errors());
    }
}
