package rinsebell.web.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.clock.Looks;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.HeatSpan;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Lane;
import rinsebell.web.view.Ribbon.Mark;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.Note;
import rinsebell.web.view.Ribbon.NotePlace;
import rinsebell.web.view.Urgency;

/** Draws what is on one section. */
final class LaneDrawing {
    private final HeadTelling head;
    private final Moment moment;
    private final Timing timing;
    private final Application application;
    private final boolean times;
    private final Instant end;

    /** @param times whether clock times are written beside the marks */
    LaneDrawing(HeadTelling head, Timing timing, boolean times) {
        this.head = head;
        this.moment = head.moment;
        this.timing = timing;
        this.application = timing.application();
        this.times = times;
        this.end = timing.rinseBy().map(Limit::at).orElse(application.firstOn().plus(RibbonDrawing.OPEN_END));
    }

    Lane lane(int place, int of) {
        return new Lane(place, of, bars(), marks(), notes(of));
    }

    private List<Bar> bars() {
        var bars = new ArrayList<Bar>();
        bars.add(bar(BarKind.MIXED, timing.mixedAt(), application.firstOn()));
        bars.add(bar(BarKind.ON, application.firstOn(), end));
        timing.rinseBy()
                .ifPresent(limit -> bars.add(
                        bar(limit.hard() ? BarKind.OVER : BarKind.OVER_SOFT, end, end.plus(RibbonDrawing.OPEN_END))));
        head.visit.heats().forEach(heat -> warm(heat).ifPresent(bars::add));
        return bars;
    }

    /** The part of a heat that this section gets; heat that is on is drawn until it must go off, or to the end. */
    private Optional<Bar> warm(HeatSpan heat) {
        var from = Instants.later(heat.from(), application.firstOn());
        var longest = timing.terms().limits().heat(heat.heat()).upTo();
        var until = heat.until() != null ? heat.until() : longest != null ? from.plus(longest) : end;
        return until.isAfter(from) ? Optional.of(bar(BarKind.HEAT, from, until)) : Optional.empty();
    }

    private List<Mark> marks() {
        var marks = new ArrayList<Mark>();
        application.checks().forEach(check -> marks.add(mark(MarkKind.CHECKED, check.at(), Urgency.CALM)));
        ready().ifPresent(at -> marks.add(mark(MarkKind.READY_FROM, at, Urgency.CALM)));
        nextCheck()
                .ifPresent(at -> marks.add(mark(
                        MarkKind.NEXT_CHECK,
                        at,
                        head.urgency(BellKind.STRAND_CHECK, application.id().value()))));
        timing.rinseBy().map(Limit::at).ifPresent(at -> marks.add(mark(MarkKind.RINSE_BY, at, rinsing(at))));
        return marks;
    }

    private Urgency rinsing(Instant at) {
        return at.isAfter(moment.now())
                ? Urgency.CALM
                : Stream.of(BellKind.RINSE, BellKind.BURNING, BellKind.HOT_FOIL)
                        .map(kind -> head.urgency(kind, head.visit.id().value()))
                        .max(Comparator.naturalOrder())
                        .orElseThrow();
    }

    /** The next look; after rinse-by nobody looks at a strand. */
    private Optional<Instant> nextCheck() {
        return Looks.strand(timing, head.visit).map(Looks.Due::at).filter(at -> at.isBefore(end));
    }

    private Optional<Instant> ready() {
        return timing.ready().filter(at -> !at.isAfter(end));
    }

    /** One section alone is named by its page; several need their names, and then there is no room for every clock. */
    private List<Note> notes(int of) {
        var notes = new ArrayList<Note>();
        if (!times) {
            notes.add(of == 1 ? named(NotePlace.ABOVE, application.firstOn()) : named(NotePlace.AFTER, end));
            return notes;
        }
        if (of > 1) {
            notes.add(named(NotePlace.ABOVE, application.firstOn()));
        } else {
            notes.add(clocked("ribbon.on", NotePlace.ABOVE, application.firstOn()));
            nextCheck().ifPresent(at -> notes.add(clocked("ribbon.check", NotePlace.ABOVE_MIDDLE, at)));
        }
        ready().ifPresent(at -> notes.add(clocked("ribbon.ready", NotePlace.BELOW_BEFORE, at)));
        timing.rinseBy().map(Limit::at).ifPresent(at -> notes.add(clocked("ribbon.rinse", NotePlace.BELOW, at)));
        return notes;
    }

    private Note named(NotePlace place, Instant at) {
        return new Note(moment.second(at), place, head.brief(application));
    }

    private Note clocked(String key, NotePlace place, Instant at) {
        return new Note(moment.second(at), place, moment.say(key, moment.clock(at)));
    }

    private Bar bar(BarKind kind, Instant from, Instant until) {
        return new Bar(kind, moment.second(from), moment.second(until), "");
    }

    private Mark mark(MarkKind kind, Instant at, Urgency urgency) {
        return new Mark(kind, moment.second(at), urgency);
    }
}
