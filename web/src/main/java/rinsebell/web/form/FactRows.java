package rinsebell.web.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rinsebell.floor.Correction;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.board.Moment;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Press;

/** Tells facts line by line, the newest first: what stands, and struck out what was withdrawn. */
final class FactRows {
    private final Moment moment;
    private final Floor floor;

    FactRows(Moment moment) {
        this.moment = moment;
        this.floor = moment.floor();
    }

    List<Row> of(Stream<rinsebell.floor.Stream> streams) {
        return told(streams.flatMap(stream -> floor.facts(stream).stream()))
                .map(fact -> row(fact, presses(fact)))
                .toList();
    }

    /** The same of any facts, to be read alone, the oldest first. */
    List<Row> toRead(Stream<Fact> facts) {
        var rows = new ArrayList<>(told(facts).map(fact -> row(fact, List.of())).toList());
        Collections.reverse(rows);
        return rows;
    }

    private Stream<Fact> told(Stream<Fact> facts) {
        return facts.filter(fact -> isOfPeople(fact.event()))
                .map(fact -> floor.standing(fact.seq()).orElse(fact))
                .sorted(Comparator.comparing(Fact::happened)
                        .thenComparingLong(Fact::seq)
                        .reversed());
    }

    /** What the program tells itself is no line of a log. */
    private static boolean isOfPeople(Event event) {
        return !(event instanceof Correction) && !(event instanceof DayEvent.TurnsAnnounced);
    }

    private Row row(Fact fact, List<Press> presses) {
        var gone = !floor.stands(fact);
        return new Row(moment.clock(fact.happened()), what(fact), detail(fact), gone, gone ? List.of() : presses);
    }

    private List<Press> presses(Fact fact) {
        var base = "/facts/" + fact.seq() + "/";
        return List.of(
                Press.opens(moment.say("form.facts.set-back"), "", base + "set-back"),
                Press.opens(moment.say("form.facts.withdraw"), "", base + "withdraw"));
    }

    /** When and what, in one phrase. */
    String telling(Fact fact) {
        return moment.clock(fact.happened()) + " " + what(fact);
    }

    private String what(Fact fact) {
        var what = moment.say(key(fact.event()));
        var note = moment.texts().apply(new TextId(fact.seq()));
        var head = head(fact);
        return head + what + (note.isEmpty() || fact.event() instanceof StayEvent.Arrived ? "" : " “" + note + "”");
    }

    private String head(Fact fact) {
        return fact.stream() instanceof rinsebell.floor.Stream.OfVisit of ? label(of.visit()) : "";
    }

    private String label(VisitId id) {
        return floor.visit(id).map(visit -> moment.label(visit) + ": ").orElse("");
    }

    private String detail(Fact fact) {
        return Stream.of(new FactDetail(moment).of(fact), who(fact))
                .filter(part -> !part.isEmpty())
                .collect(java.util.stream.Collectors.joining(" · "));
    }

    private String who(Fact fact) {
        var by = moment.name(fact.by());
        var late = fact.recorded().minusSeconds(60).isAfter(fact.happened());
        var written = late ? moment.say("sheet.written", moment.clock(fact.recorded())) : "";
        var unsure = fact.unsure() ? moment.say("answer.unsure") : "";
        return Stream.of(by, written, unsure)
                .filter(part -> !part.isEmpty())
                .collect(java.util.stream.Collectors.joining(" · "));
    }

    static String key(Event event) {
        return key(event.getClass());
    }

    static String key(Class<?> event) {
        return "fact." + event.getSimpleName().toLowerCase(Locale.ROOT);
    }
}
