package rinsebell.web.board;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Heat;
import rinsebell.floor.visit.HeatSpan;
import rinsebell.web.view.Line;
import rinsebell.web.view.Urgency;

/** Tells the heat on a head: until when it may stay, that it is over, and what is reckoned with it. */
final class HeatTelling {
    private final HeadTelling head;
    private final Moment moment;

    HeatTelling(HeadTelling head) {
        this.head = head;
        this.moment = head.moment;
    }

    /** Such as "Gentle steam until | 18:10 | in 07:12"; empty while none is on. */
    Optional<Line> line() {
        return head.visit
                .heat()
                .map(span -> end().map(end -> ends(span, end))
                        .orElseGet(() -> new Line(
                                moment.say("line.heat", name(span.heat())),
                                moment.say("rule.since", moment.clock(span.from())))));
    }

    private Line ends(HeatSpan span, Instant end) {
        return isOver(end)
                ? new Line(
                        moment.say("line.heat.over", name(span.heat())),
                        moment.say("rule.since", moment.clock(end)),
                        null,
                        Urgency.MEDIUM)
                : new Line(moment.say("line.heat.until", name(span.heat())), moment.clock(end), end, Urgency.CALM);
    }

    /** Since when a heat that is still on should be off by its allowed time; empty for one that is not on, or may be. */
    Optional<Instant> overSince(Heat heat) {
        return head.visit
                .heat()
                .filter(span -> span.heat() == heat)
                .flatMap(span -> end())
                .filter(this::isOver);
    }

    private boolean isOver(Instant end) {
        return !end.isAfter(moment.now());
    }

    /** The end of its allowed time is that of the bell for it. */
    private Optional<Instant> end() {
        return head.own().stream()
                .filter(bell -> bell.kind() == BellKind.HEAT_END)
                .findFirst()
                .map(Bell::since);
    }

    /** Behind an instant that comes this early only with the heat that is on; else empty. */
    String assumed(Timing timing) {
        return head.visit
                .heat()
                .map(HeatSpan::heat)
                .filter(heat -> timing.terms().limits().heat(heat).allowed()
                        && timing.terms().develops().stream()
                                .anyMatch(develops -> develops.heated().containsKey(heat)))
                .map(heat -> moment.say("line.heat.assumed", moment.say(heat)))
                .orElse("");
    }

    private String name(Heat heat) {
        var words = moment.say(heat);
        return words.substring(0, 1).toUpperCase(Locale.UK) + words.substring(1);
    }
}
