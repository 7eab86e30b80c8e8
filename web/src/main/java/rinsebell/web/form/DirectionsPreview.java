package rinsebell.web.form;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.clock.Looks;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Directions;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Mark;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.Note;
import rinsebell.web.view.Ribbon.NotePlace;
import rinsebell.web.view.TimesExample;
import rinsebell.web.view.Urgency;

/** Reckons what directions mean on a clock, for a bowl mixed now. */
final class DirectionsPreview {
    private DirectionsPreview() {}

    /** The times of what is typed so far; faults are left to the form, and what can be read counts. */
    static TimesExample of(PageAsk ask) {
        var entries = new Entries(ask.target(), ask.typed());
        return of(ask, DirectionsForm.directions(entries));
    }

    static TimesExample of(PageAsk ask, Directions directions) {
        var example = new ExampleHead(ask.salon(), directions, ask.moment().now());
        var timing = example.timing();
        var title = ask.say("preview.title", ask.moment().clock(timing.mixedAt()));
        return new TimesExample(title, new Drawing(ask, example, timing).ribbon(), lines(ask, timing));
    }

    private static List<String> lines(PageAsk ask, Timing timing) {
        var lines = new ArrayList<String>();
        timing.ready()
                .ifPresent(at -> lines.add(ask.say("preview.ready", ask.moment().clock(at))));
        timing.limits()
                .forEach(limit -> lines.add(ask.say(
                        limit.hard() ? "preview.limit.hard" : "preview.limit",
                        ask.moment().clock(limit.at()),
                        ask.moment().say("why." + limit.why().name().toLowerCase(java.util.Locale.ROOT)))));
        if (timing.isReadyTooLate()) {
            lines.add(ask.say("line.ready_too_late"));
        }
        if (timing.limits().isEmpty()) {
            lines.add(ask.say("preview.no_end"));
        }
        return lines;
    }

    /** Draws the example. */
    private record Drawing(PageAsk ask, ExampleHead example, Timing timing) {
        Optional<Ribbon> ribbon() {
            return timing.rinseBy().map(Limit::at).map(this::ribbon);
        }

        private Ribbon ribbon(Instant end) {
            var from = timing.mixedAt().minus(Duration.ofMinutes(5));
            var until = end.plus(Duration.ofMinutes(15));
            var lane = new Ribbon.Lane(0, 1, bars(end), marks(end), notes(end));
            var telling = String.join(" ", lines(ask, timing));
            return new Ribbon(telling, epoch(), new Ribbon.Reach(second(from), second(until)), List.of(lane));
        }

        private List<Bar> bars(Instant end) {
            var on = timing.application().firstOn();
            return List.of(
                    new Bar(BarKind.MIXED, second(timing.mixedAt()), second(on), ""),
                    new Bar(BarKind.ON, second(on), Math.max(second(on), second(end)), ""));
        }

        private List<Mark> marks(Instant end) {
            var marks = new ArrayList<Mark>();
            timing.ready().ifPresent(at -> marks.add(new Mark(MarkKind.READY_FROM, second(at), Urgency.CALM)));
            Looks.strand(timing, example.visit())
                    .ifPresent(look -> marks.add(new Mark(MarkKind.NEXT_CHECK, second(look.at()), Urgency.CALM)));
            marks.add(new Mark(MarkKind.RINSE_BY, second(end), Urgency.CALM));
            return marks;
        }

        private List<Note> notes(Instant end) {
            var notes = new ArrayList<Note>();
            notes.add(new Note(
                    second(end),
                    NotePlace.BELOW,
                    ask.say("preview.mark.rinse", ask.moment().clock(end))));
            timing.ready()
                    .ifPresent(at -> notes.add(new Note(
                            second(at),
                            NotePlace.ABOVE,
                            ask.say("preview.mark.ready", ask.moment().clock(at)))));
            return notes;
        }

        private Instant epoch() {
            return ask.moment().epoch();
        }

        private long second(Instant at) {
            return Duration.between(epoch(), at).toSeconds();
        }
    }
}
