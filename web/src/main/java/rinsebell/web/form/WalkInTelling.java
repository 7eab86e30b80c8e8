package rinsebell.web.form;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.ReasonCode.Basis;
import rinsebell.floor.rule.GateRules;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.turnaround.Turnaround;
import rinsebell.floor.turnaround.Wish;
import rinsebell.floor.visit.Gate;
import rinsebell.web.board.GateTelling;
import rinsebell.web.board.Moment;
import rinsebell.web.board.ReasonTelling;
import rinsebell.web.board.SpanTelling;
import rinsebell.web.view.Answer;
import rinsebell.web.view.Form;
import rinsebell.web.view.Judged;

/** Whether there is room for somebody who has not been welcomed yet, and what speaks against it: from what is typed. */
final class WalkInTelling {
    static final String LEAST = "least";

    private final PageAsk ask;
    private final Moment moment;
    private final Entries entries;
    private final List<Service> services;

    WalkInTelling(PageAsk ask) {
        this.ask = ask;
        this.moment = ask.moment();
        this.entries = new Entries(ask.target(), ask.typed());
        this.services = ServiceForm.some(entries);
    }

    Form.Preview preview() {
        return new Form.Preview("/visits/preview", ask.say("walkin.asks"), judged());
    }

    private Judged judged() {
        var least = entries.minutes(LEAST, 1, ServiceForm.LONGEST_MINUTES);
        if (services.isEmpty() && least.isEmpty()) {
            return new Judged(ask.say("walkin.later"), List.of());
        }
        var wish = new Wish(services, chair(), least.orElse(Duration.ZERO));
        return new Judged(answer(wish), reasons());
    }

    /** Where they are put if that is a chair that nobody holds. */
    private Optional<Integer> chair() {
        return EntryPlaces.place(entries, "place")
                .filter(Place.Chair.class::isInstance)
                .map(place -> ((Place.Chair) place).number());
    }

    private String answer(Wish wish) {
        var comes = Turnaround.of(moment.floor(), moment.now(), wish).comes().orElseThrow();
        var chair = moment.place(Place.chair(comes.chair()));
        var begins = comes.begins().latest();
        return begins.isAfter(moment.now())
                ? ask.say(
                        "walkin.then",
                        chair,
                        SpanTelling.span(moment, comes.begins()),
                        SpanTelling.span(moment, comes.done()))
                : ask.say("walkin.now", chair, SpanTelling.span(moment, comes.done()));
    }

    private List<Answer.Reason> reasons() {
        if (!services.contains(Service.BOWL) && !services.contains(Service.TONER)) {
            return List.of();
        }
        var all = new ArrayList<Answer.Reason>();
        var gate = VisitForms.answers(entries);
        skinTest(gate).ifPresent(said -> all.add(told(said, Basis.GATE)));
        all.addAll(new GateTelling(moment, gate).reasons());
        if (!moment.floor().outlook(moment.now()).plan().isSafe()) {
            all.add(told(ask.say("desk.walkin.clash"), Basis.CARE));
        }
        return all;
    }

    /** What a mixture with dye needs, as far as somebody has said it; what speaks against it is among the reasons. */
    private Optional<String> skinTest(Gate gate) {
        var test = gate.skinTest();
        if (test == null) {
            return Optional.of(ask.say("desk.walkin.gate"));
        }
        return GateRules.isValid(test, moment.now(), ask.salon())
                ? Optional.of(ask.say("walkin.tested"))
                : Optional.empty();
    }

    private Answer.Reason told(String said, Basis basis) {
        return ReasonTelling.told(said, basis.name(), moment);
    }
}
