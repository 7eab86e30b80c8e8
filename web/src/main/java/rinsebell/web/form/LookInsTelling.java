package rinsebell.web.form;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.web.board.Moment;
import rinsebell.web.form.LookInsPage.Fresh;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Field;
import rinsebell.web.view.Press;
import rinsebell.web.view.QrCode;
import rinsebell.web.view.Shell;

/** Tells of the links that look in: whose each is, and, once, what a fresh one is. */
public final class LookInsTelling {
    /** Where the links are listed. */
    public static final String PAGE = "/look-ins";

    private final Moment moment;

    public LookInsTelling(Moment moment) {
        this.moment = moment;
    }

    /** @param fresh what was just made; null for nothing */
    public LookInsPage page(Shell shell, List<Row> rows, Field name, @Nullable Fresh fresh) {
        var title = moment.say(rows.isEmpty() ? "look_ins.none" : "look_ins.out");
        return new LookInsPage(shell, fresh, new Part(title, rows, List.of()), name);
    }

    /** @param opened when it was opened last; null for never */
    public Row row(long id, String name, Instant made, @Nullable Instant opened) {
        var detail = moment.say("look_ins.made", moment.time().day(made), moment.clock(made)) + " · "
                + (opened == null
                        ? moment.say("look_ins.never")
                        : moment.say("look_ins.opened", moment.time().day(opened), moment.clock(opened)));
        var back = Press.sends(moment.say("look_ins.take_back", name), "", PAGE + "/" + id + "/take-back");
        return new Row("", name, detail, false, List.of(back));
    }

    /** The field with what was typed in it, and what is wrong with that. */
    public Field name(Fields typed, List<FieldError> errors) {
        var words = new FaultWords(moment.words());
        return new Field(
                Field.Kind.TEXT,
                LookInForms.NAME,
                moment.say("look_ins.name"),
                errors.isEmpty() ? "" : typed.first(LookInForms.NAME).orElse(""),
                List.of(),
                moment.say("look_ins.name.hint"),
                errors.stream().map(words::say).distinct().collect(Collectors.joining(" ")));
    }

    /**
     * @param page its address
     * @param calendar the address of the same for a calendar
     * @param isLocal whether no other machine can reach that
     */
    public Fresh fresh(String name, String page, String calendar, boolean isLocal) {
        return new Fresh(
                moment.say("look_ins.fresh", name),
                isLocal ? moment.say("look_ins.local") : "",
                QrCode.of(page),
                calendar);
    }
}
