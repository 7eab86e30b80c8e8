package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.clock.Terms;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Lane;
import rinsebell.web.view.Ribbon.Mark;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.Note;
import rinsebell.web.view.Ribbon.NotePlace;
import rinsebell.web.view.Urgency;

/** Draws one head's ribbon: a lane for each application that is on; what is over, and what waits, in the first. */
final class RibbonDrawing {
    /** A bar whose end nobody knows is drawn this long. */
    static final Duration OPEN_END = Duration.ofHours(6);

    private static final Duration WAITING = Duration.ofHours(1);
    private static final Duration MARGIN = Duration.ofMinutes(10);

    private final HeadTelling head;
    private final Moment moment;

    RibbonDrawing(HeadTelling head) {
        this.head = head;
        this.moment = head.moment;
    }

    /** A ribbon that pans with the floor's axis. */
    Ribbon panning() {
        return new Ribbon(telling(), moment.epoch(), null, lanes(false));
    }

    /** A ribbon that is shown whole, with the clock times written beside its marks. */
    Ribbon whole() {
        var lanes = lanes(true);
        return new Ribbon(telling(), moment.epoch(), reach(lanes), lanes);
    }

    private List<Lane> lanes(boolean times) {
        var lanes = new ArrayList<Lane>();
        var timings = head.timing.timings();
        for (var timing : timings) {
            lanes.add(new LaneDrawing(head, timing, times).lane(lanes.size(), timings.size()));
        }
        return timings.isEmpty() ? waitingLanes() : with(lanes, List.of(over(), waiting(waiting(), false)));
    }

    /** Nothing is on: each bowl that waits has a lane, so that their names stand apart. */
    private List<Lane> waitingLanes() {
        var bowls = waiting();
        var lanes = new ArrayList<Lane>();
        for (var bowl : bowls) {
            var lane = waiting(List.of(bowl), true);
            lanes.add(new Lane(lanes.size(), bowls.size(), lane.bars(), lane.marks(), lane.notes()));
        }
        var over = over();
        return lanes.isEmpty() ? over.bars().isEmpty() ? List.of() : List.of(over) : with(lanes, List.of(over));
    }

    private static List<Lane> with(List<Lane> lanes, List<Lane> more) {
        var all = new ArrayList<>(lanes);
        more.forEach(lane -> all.set(0, both(all.get(0), lane)));
        return List.copyOf(all);
    }

    private static Lane both(Lane lane, Lane more) {
        return new Lane(
                lane.place(),
                lane.of(),
                Stream.concat(lane.bars().stream(), more.bars().stream()).toList(),
                Stream.concat(lane.marks().stream(), more.marks().stream()).toList(),
                lane.notes());
    }

    /** What is on no hair any more. */
    private Lane over() {
        var bars = new ArrayList<Bar>();
        var marks = new ArrayList<Mark>();
        for (var application : head.visit.applications()) {
            var ending = application.ending();
            if (ending != null && ending.isOff()) {
                bars.add(bar(BarKind.ENDED, application.firstOn(), ending.at()));
                marks.add(new Mark(MarkKind.RINSED, moment.second(ending.at()), Urgency.CALM));
            }
        }
        return new Lane(0, 1, bars, marks, List.of());
    }

    /** What is on no hair yet. */
    private Lane waiting(List<Bowl> bowls, boolean named) {
        var bars = new ArrayList<Bar>();
        var notes = new ArrayList<Note>();
        bowls.forEach(bowl -> {
            bars.add(bar(BarKind.MIXED, bowl.mixedAt(), usableUntil(bowl)));
            if (named) {
                var text = moment.say("ribbon.waiting", moment.bowl(Optional.of(bowl)));
                notes.add(new Note(moment.second(bowl.mixedAt()), NotePlace.ABOVE, text));
            }
        });
        return new Lane(0, 1, bars, List.of(), notes);
    }

    private List<Bowl> waiting() {
        return moment.floor().waitingBowls().stream()
                .filter(bowl -> head.visit.id().equals(bowl.forVisit()))
                .toList();
    }

    private Instant usableUntil(Bowl bowl) {
        var active = Terms.of(bowl, moment.floor().salon()).active();
        return bowl.mixedAt().plus(active == null ? WAITING : active.usableFor());
    }

    /** From before the first bar until after the last known end. */
    private Ribbon.@Nullable Reach reach(List<Lane> lanes) {
        var bars = lanes.stream().flatMap(lane -> lane.bars().stream()).toList();
        if (bars.isEmpty()) {
            return null;
        }
        var from = bars.stream().mapToLong(Bar::from).min().orElseThrow();
        var until = bars.stream()
                .filter(bar -> bar.kind() != BarKind.OVER && bar.kind() != BarKind.OVER_SOFT)
                .mapToLong(Bar::until)
                .max()
                .orElseThrow();
        return new Ribbon.Reach(from - MARGIN.toSeconds() / 2, until + MARGIN.toSeconds());
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
}
