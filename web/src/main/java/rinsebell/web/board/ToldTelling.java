package rinsebell.web.board;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.turnaround.Range;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.Press;

/** What clients were told of when they will be done, and who will be later than that: said before it has happened. */
final class ToldTelling {
    private final Moment moment;

    ToldTelling(Moment moment) {
        this.moment = moment;
    }

    String said(Visit visit) {
        return visit.services()
                .told()
                .map(at -> moment.say("desk.told", moment.clock(at)))
                .orElse("");
    }

    /** Keeps what the board says now as what they were told. */
    List<Press> presses(Visit visit) {
        return end(visit).filter(range -> ChairTime.isKnown(visit)).map(Range::latest).stream()
                .filter(latest -> !visit.services()
                        .told()
                        .filter(ChairTime.rounded(latest)::equals)
                        .isPresent())
                .map(latest -> Press.sends(
                        moment.say("press.told"),
                        moment.say("press.told.hint", SpanTelling.clock(moment, latest)),
                        "/visits/" + visit.id().value() + "/end-told",
                        new Press.Hidden("until", SpanTelling.typed(moment, latest))))
                .toList();
    }

    /** One sentence for each who will likely be later, and then for each who may be. */
    List<String> overruns() {
        var open = moment.floor().openVisits();
        return Stream.concat(
                        open.stream().filter(this::isLikelyLate),
                        open.stream()
                                .filter(visit -> !isLikelyLate(visit))
                                .filter(visit -> isPast(visit, end(visit).map(Range::latest))))
                .map(this::overrun)
                .toList();
    }

    private Optional<Range> end(Visit visit) {
        var turnaround = moment.floor().turnaround(moment.now());
        return turnaround.end(visit.id()).or(() -> turnaround.waits(visit.id()).map(waits -> waits.done()));
    }

    private boolean isLikelyLate(Visit visit) {
        return isPast(visit, end(visit).map(Range::likely));
    }

    private static boolean isPast(Visit visit, Optional<Instant> end) {
        return visit.services()
                .told()
                .flatMap(told -> end.filter(at -> ChairTime.rounded(at).isAfter(told)))
                .isPresent();
    }

    private String overrun(Visit visit) {
        var said = moment.say(
                isLikelyLate(visit) ? "desk.overrun" : "desk.overrun.maybe",
                moment.whereabouts(visit),
                moment.label(visit),
                visit.services().told().map(moment::clock).orElse(""),
                end(visit).map(range -> SpanTelling.span(moment, range)).orElse(""));
        return Moment.joined(" ", said, next(visit));
    }

    /** Who waits for that chair has to know as well. */
    private String next(Visit visit) {
        var chair = visit.stay().chair();
        return moment.floor().turnaround(moment.now()).waits().stream()
                .filter(one -> chair != null && one.chair() == chair.number())
                .flatMap(one -> one.visit().stream())
                .filter(other -> !other.equals(visit.id()))
                .flatMap(other -> moment.floor().visit(other).stream())
                .findFirst()
                .map(other -> moment.say("desk.overrun.next", moment.label(other)))
                .orElse("");
    }
}
