package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.clock.Looks;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.HeatSpan;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Lane;
import rinsebell.web.view.Ribbon.Mark;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.Note;
import rinsebell.web.view.Ribbon.NotePlace;
import rinsebell.web.view.Urgency;

/** Draws one head's ribbon: a lane for each application that is on, the ended ones together in the first. */
final class RibbonDrawing {
    /** An end that nobody knows is drawn this far away. */
    private static final Duration OPEN_END = Duration.ofHours(6);

    private static final Duration MARGIN = Duration.ofMinutes(5);

    private final HeadTelling head;
    private final Moment moment;

    RibbonDrawing(HeadTelling head) {
        this.head = head;
        this.moment = head.moment;
    }

    /** A ribbon that pans with the floor's axis. */
    Ribbon panning() {
        return ribbon(null, false);
    }

    /** A ribbon that is shown whole, with the clock times written beside its marks. */
    Ribbon whole() {
        return ribbon(reach(), true);
    }

    private Ribbon ribbon(Ribbon.@Nullable Reach reach, boolean times) {
        var lanes = new ArrayList<Lane>();
        var timings = head.timing.timings();
        for (var i = 0; i < timings.size(); i++) {
            lanes.add(lane(timings.get(i), i, timings.size(), times));
        }
        if (lanes.isEmpty()) {
            lanes.add(new Lane(0, 1, List.of(), List.of(), List.of()));
        }
        var first = lanes.get(0);
        var bars = new ArrayList<>(first.bars());
        var marks = new ArrayList<>(first.marks());
        ended(bars, marks);
        waiting(bars);
        lanes.set(0, new Lane(0, first.of(), bars, marks, first.notes()));
        return new Ribbon(telling(), moment.epoch(), reach, List.copyOf(lanes));
    }

    private Ribbon.Reach reach() {
        var from = head.visit.applications().stream()
                .map(Application::firstOn)
                .min(Instant::compareTo)
                .orElse(head.visit.stay().arrivedAt());
        var until = head.timing.rinseBy().map(limit -> limit.at()).orElse(from.plus(Duration.ofHours(1)));
        return new Ribbon.Reach(
                moment.second(from.minus(MARGIN.multipliedBy(2))), moment.second(until.plus(MARGIN.multipliedBy(2))));
    }

    private Lane lane(Timing timing, int place, int of, boolean times) {
        var application = timing.application();
        var end = timing.rinseBy()
                .map(limit -> limit.at())
                .orElse(application.firstOn().plus(OPEN_END));
        var bars = new ArrayList<Bar>();
        bars.add(bar(BarKind.MIXED, timing.mixedAt(), application.firstOn()));
        bars.add(bar(BarKind.ON, application.firstOn(), end));
        timing.rinseBy().ifPresent(limit -> bars.add(bar(BarKind.OVER, end, end.plus(OPEN_END))));
        head.visit.heats().stream()
                .filter(heat -> heatEnd(heat).isAfter(application.firstOn()))
                .map(heat -> bar(BarKind.HEAT, heat.from(), heatEnd(heat)))
                .forEach(bars::add);
        var notes = new ArrayList<Note>();
        notes.add(note(application.firstOn(), NotePlace.ABOVE, head.what(application)));
        if (times) {
            timing.rinseBy()
                    .ifPresent(limit -> notes.add(
                            note(limit.at(), NotePlace.BELOW, moment.say("ribbon.rinse", moment.clock(limit.at())))));
            timing.ready()
                    .ifPresent(at ->
                            notes.add(note(at, NotePlace.BELOW_BEFORE, moment.say("ribbon.ready", moment.clock(at)))));
        }
        return new Lane(place, of, bars, marks(timing), notes);
    }

    private Instant heatEnd(HeatSpan heat) {
        var until = heat.until();
        return until == null ? heat.from().plus(OPEN_END) : until;
    }

    private List<Mark> marks(Timing timing) {
        var marks = new ArrayList<Mark>();
        timing.application().checks().forEach(check -> marks.add(mark(MarkKind.CHECKED, check.at(), Urgency.CALM)));
        timing.ready().ifPresent(at -> marks.add(mark(MarkKind.READY_FROM, at, Urgency.CALM)));
        Looks.strand(timing, head.visit)
                .map(Looks.Due::at)
                .ifPresent(at -> marks.add(mark(MarkKind.NEXT_CHECK, at, urgency(at))));
        timing.rinseBy().ifPresent(limit -> marks.add(mark(MarkKind.RINSE_BY, limit.at(), urgency(limit.at()))));
        return marks;
    }

    private Urgency urgency(Instant at) {
        return at.isAfter(moment.now()) ? Urgency.CALM : head.due().urgency();
    }

    private void ended(List<Bar> bars, List<Mark> marks) {
        for (var application : head.visit.applications()) {
            var ending = application.ending();
            if (ending != null && ending.isOff()) {
                bars.add(bar(BarKind.ENDED, application.firstOn(), ending.at()));
                marks.add(mark(MarkKind.RINSED, ending.at(), Urgency.CALM));
            }
        }
    }

    private void waiting(List<Bar> bars) {
        moment.floor().day().bowls().stream()
                .filter(bowl -> head.visit.id().equals(bowl.forVisit()) && isStanding(bowl))
                .map(bowl -> bar(BarKind.MIXED, bowl.mixedAt(), bowl.mixedAt().plus(Duration.ofHours(1))))
                .forEach(bars::add);
    }

    private boolean isStanding(Bowl bowl) {
        return !bowl.isThrownAway() && !bowl.divided() && !moment.floor().isTouched(bowl.id());
    }

    private String telling() {
        return head.timing.timings().stream()
                .map(timing -> moment.say(
                        "ribbon.telling",
                        head.what(timing.application()),
                        moment.clock(timing.application().firstOn()),
                        timing.rinseBy().map(limit -> moment.clock(limit.at())).orElse("–")))
                .collect(Collectors.joining("; "));
    }

    private Bar bar(BarKind kind, Instant from, Instant until) {
        return new Bar(kind, moment.second(from), moment.second(until), "");
    }

    private Mark mark(MarkKind kind, Instant at, Urgency urgency) {
        return new Mark(kind, moment.second(at), urgency);
    }

    private Note note(Instant at, NotePlace place, String text) {
        return new Note(moment.second(at), place, text);
    }
}
