package rinsebell.web.form;

import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.Decision;
import rinsebell.floor.Reason;
import rinsebell.floor.command.Judgement;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.Weighed;
import rinsebell.web.board.ReasonTelling;
import rinsebell.web.board.SafeStartTelling;
import rinsebell.web.view.Answer;
import rinsebell.web.view.Form;
import rinsebell.web.view.Judged;
import rinsebell.web.view.MixtureSheet;

/** Decides what is typed as if it were pressed now, and writes nothing down. */
record Judging(PageAsk ask, PressForm form) {

    /** What stands behind the fields of a form, and is asked again while they are typed. */
    static Form.Preview preview(PageAsk ask, PressForm form, String press) {
        return new Form.Preview(press + "/preview", ask.say("form.judged"), new Judging(ask, form).judged());
    }

    /** Of a bowl whose grams are typed: what is in it, and what speaks against it off the scalp and on it. */
    static Form.Preview mixing(PageAsk ask, String press) {
        var read = BowlForms.MIX.read(ask.target(), ask.typed());
        var shown = read instanceof Reading.Read one && one.command() instanceof Mix mix
                ? mixing(ask, mix)
                : new MixtureSheet("", ask.say("judged.later"), List.of(), List.of(), List.of());
        return new Form.Preview(press + "/preview", ask.say("form.judged"), shown);
    }

    private static MixtureSheet mixing(PageAsk ask, Mix mix) {
        var told = new CompositionTelling(ask, mix.weighed());
        var portions = Weighed.portions(mix.weighed(), ask.salon());
        var judgement = Judgement.of(
                ask.moment().floor(),
                mix.forVisit(),
                portions,
                mix.reason(),
                ask.moment().now());
        var safe = SafeStartTelling.ofMixing(ask.moment(), mix.forVisit(), portions);
        var lines = Stream.concat(Stream.of(safe, told.weight()), told.strengths().stream())
                .filter(line -> !line.isEmpty())
                .toList();
        return new MixtureSheet("", "", List.of(), lines, MixtureTelling.verdicts(ask, judgement));
    }

    private Judged judged() {
        var target = ask.target();
        return form.read(target, ask.typed()) instanceof Reading.Read read ? judged(read) : quiet();
    }

    private Judged quiet() {
        return new Judged(ask.say("judged.later"), List.of());
    }

    private Judged judged(Reading.Read read) {
        var decision = read.command().decide(ask.moment().floor(), read.asked());
        return decision instanceof Decision.Refused refused
                ? new Judged(ask.say("judged.refused"), said(refused.reasons()))
                : decision instanceof Decision.Accepted accepted
                                && !accepted.cautions().isEmpty()
                        ? new Judged(ask.say("judged.careful"), said(accepted.cautions()))
                        : new Judged(ask.say("judged.free"), List.of());
    }

    private List<Answer.Reason> said(List<Reason> reasons) {
        return reasons.stream()
                .map(reason -> ReasonTelling.told(reason, ask.moment()))
                .toList();
    }
}
