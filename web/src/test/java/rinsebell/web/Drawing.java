package rinsebell.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import rinsebell.web.view.Ribbon;
import rinsebell.web.view.Ribbon.Bar;
import rinsebell.web.view.Ribbon.BarKind;
import rinsebell.web.view.Ribbon.Lane;
import rinsebell.web.view.Ribbon.Mark;
import rinsebell.web.view.Ribbon.MarkKind;
import rinsebell.web.view.Ribbon.Note;
import rinsebell.web.view.Ribbon.NotePlace;
import rinsebell.web.view.Urgency;

/** Draws sample ribbons with clock times such as {@code 13:49}. */
final class Drawing {
    private final List<Bar> bars = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    static Drawing lane() {
        return new Drawing();
    }

    static long second(String clock) {
        return Samples.at(clock).getEpochSecond() - Samples.EPOCH.getEpochSecond();
    }

    static Instant epoch() {
        return Samples.EPOCH;
    }

    static Ribbon panning(String telling, Drawing... lanes) {
        return new Ribbon(telling, epoch(), null, numbered(lanes));
    }

    static Ribbon whole(String telling, String from, String until, Drawing... lanes) {
        return new Ribbon(telling, epoch(), new Ribbon.Reach(second(from), second(until)), numbered(lanes));
    }

    private static List<Lane> numbered(Drawing... lanes) {
        var all = new ArrayList<Lane>();
        for (var lane : lanes) {
            all.add(new Lane(all.size(), lanes.length, lane.bars, lane.marks, lane.notes));
        }
        return all;
    }

    Drawing bar(BarKind kind, String from, String until) {
        return bar(kind, from, until, "");
    }

    Drawing bar(BarKind kind, String from, String until, String text) {
        bars.add(new Bar(kind, second(from), second(until), text));
        return this;
    }

    Drawing mark(MarkKind kind, Urgency urgency, String... clocks) {
        for (var clock : clocks) {
            marks.add(new Mark(kind, second(clock), urgency));
        }
        return this;
    }

    Drawing mark(MarkKind kind, String... clocks) {
        return mark(kind, Urgency.CALM, clocks);
    }

    Drawing note(String clock, NotePlace place, String text) {
        notes.add(new Note(second(clock), place, text));
        return this;
    }

    /** The same without its name above, and with its name after its end instead. */
    static Drawing narrow(String text, String mixed, String on, String rinseBy) {
        var drawing = bowl(text, mixed, on, rinseBy);
        drawing.notes.clear();
        return drawing.note(rinseBy, NotePlace.AFTER, text);
    }

    /** Mixed, on, and to be rinsed by. */
    static Drawing bowl(String text, String mixed, String on, String rinseBy) {
        return lane().bar(BarKind.MIXED, mixed, on)
                .bar(BarKind.ON, on, rinseBy)
                .mark(MarkKind.RINSE_BY, rinseBy)
                .note(mixed, NotePlace.ABOVE, text);
    }
}
