package rinsebell.web.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.clock.Looks;
import rinsebell.floor.visit.Application;
import rinsebell.web.view.Urgency;

/** What asks for somebody at a head now, and what comes next there. */
final class HeadNext {
    private final HeadTelling head;
    private final Moment moment;

    HeadNext(HeadTelling head) {
        this.head = head;
        this.moment = head.moment;
    }

    /**
     * Something that will be due.
     *
     * @param key of its words
     */
    record Coming(Act act, String key, Instant at) {}

    /** The bells of this head that ring or ask, the loudest first; a rinse that is merely coming hides no check before it. */
    List<Bell> asking() {
        return head.own().stream()
                .filter(bell -> head.bells.urgency(bell) != Urgency.CALM && !isFarOff(bell))
                .sorted(head.bells.loudestFirst())
                .toList();
    }

    private boolean isFarOff(Bell bell) {
        var counts = head.bells.counts(bell);
        return head.bells.urgency(bell) == Urgency.ASKED
                && counts.isAfter(moment.now())
                && coming().stream().anyMatch(coming -> coming.at.isBefore(counts));
    }

    /** What will be due, the soonest first. */
    List<Coming> coming() {
        var all = new ArrayList<Coming>();
        var timing = head.timing;
        timing.nextStrand()
                .map(Looks.Due::at)
                .ifPresent(at -> all.add(new Coming(Act.STRAND, "bell.strand_check", at)));
        timing.nextScalp().map(Looks.Due::at).ifPresent(at -> all.add(new Coming(Act.SCALP, "bell.scalp_check", at)));
        foilsOut().ifPresent(at -> all.add(new Coming(Act.FOILS_OUT, "due.foils_out", at)));
        timing.rinseBy().ifPresent(limit -> all.add(new Coming(Act.RINSE, "due.rinse", limit.at())));
        return all.stream().sorted(Comparator.comparing(Coming::at)).toList();
    }

    /** When foils have to begin to come out, so that water is on in time; empty once that has come, or once they are out. */
    Optional<Instant> foilsOut() {
        return areFoilsIn()
                ? head.timing.startBy(moment.floor()).filter(at -> at.isAfter(moment.now()))
                : Optional.empty();
    }

    /** Foils are on, and nobody has begun to take them out for the rinse; a few that came out long before do not count. */
    boolean areFoilsIn() {
        var soon = head.timing
                .startBy(moment.floor())
                .map(at -> at.minus(moment.floor().salon().policy().working().soon()));
        return head.visit.live().stream()
                .filter(application -> application.area().isFoils())
                .anyMatch(application ->
                        soon.filter(from -> isOutSince(application, from)).isEmpty());
    }

    private static boolean isOutSince(Application application, Instant from) {
        return application.foilsOut().stream().anyMatch(out -> !out.isBefore(from));
    }
}
