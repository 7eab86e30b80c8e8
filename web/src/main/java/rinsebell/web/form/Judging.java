package rinsebell.web.form;

import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.Decision;
import rinsebell.floor.Reason;
import rinsebell.floor.command.Mix;
import rinsebell.web.board.ReasonTelling;
import rinsebell.web.view.Answer;
import rinsebell.web.view.Form;
import rinsebell.web.view.Judged;

/** Decides what is typed as if it were pressed now, and writes nothing down. */
record Judging(PageAsk ask, PressForm form) {

    /** What stands behind the fields of a form, and is asked again while they are typed. */
    static Form.Preview preview(PageAsk ask, PressForm form, String press) {
        return new Form.Preview(press + "/preview", ask.say("form.judged"), new Judging(ask, form).judged());
    }

    private Judged judged() {
        var target = ask.target();
        return form.read(target, ask.typed()) instanceof Reading.Read read ? judged(read) : quiet();
    }

    private Judged quiet() {
        return new Judged(ask.say("judged.later"), List.of(), List.of());
    }

    private Judged judged(Reading.Read read) {
        var decision = read.command().decide(ask.moment().floor(), read.asked());
        return decision instanceof Decision.Refused refused
                ? new Judged(ask.say("judged.refused"), lines(read), said(refused.reasons()))
                : decision instanceof Decision.Accepted accepted
                                && !accepted.cautions().isEmpty()
                        ? new Judged(ask.say("judged.careful"), lines(read), said(accepted.cautions()))
                        : new Judged(ask.say("judged.free"), lines(read), List.of());
    }

    /** Of a bowl: what all of it weighs, and what is in it. */
    private List<String> lines(Reading.Read read) {
        return Stream.of(read.command())
                .flatMap(command -> command instanceof Mix mix ? Stream.of(mix.weighed()) : Stream.empty())
                .map(weighed -> new CompositionTelling(ask, weighed))
                .flatMap(told -> Stream.concat(Stream.of(told.weight()), told.strengths().stream()))
                .toList();
    }

    private List<Answer.Reason> said(List<Reason> reasons) {
        return reasons.stream()
                .map(reason -> ReasonTelling.told(reason, ask.moment()))
                .toList();
    }
}
