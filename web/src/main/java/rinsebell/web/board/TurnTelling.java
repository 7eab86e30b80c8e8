package rinsebell.web.board;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Outlook;
import rinsebell.floor.basin.Outlook.Squeeze;
import rinsebell.floor.basin.Turn;
import rinsebell.floor.bowl.Pin;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.Due;
import rinsebell.web.view.Line;
import rinsebell.web.view.Press;
import rinsebell.web.view.Troubles;
import rinsebell.web.view.Urgency;

/** The coming turns at the basins, in words. */
final class TurnTelling {
    private final Moment moment;
    private final Outlook outlook;

    TurnTelling(Moment moment) {
        this.moment = moment;
        this.outlook = moment.floor().outlook(moment.now());
    }

    /** The next turn of each head, in their order. */
    List<Turn> next() {
        return outlook.plan().turns().stream()
                .filter(turn -> outlook.turn(turn.visit()).filter(turn::equals).isPresent())
                .toList();
    }

    String letter(Turn turn) {
        return new Place.Basin(turn.basin()).letter();
    }

    Due due(Turn turn) {
        var what = moment.say("basins.to", letter(turn), moment.clock(turn.water()));
        return new Due(what, turn.water(), turn.isLate() ? Urgency.MEDIUM : Urgency.CALM, aside(turn));
    }

    /** Opens what a person can decide about a turn, and says what is decided. */
    Press pin(Visit visit) {
        var pin = Optional.ofNullable(moment.floor().day().pins().get(visit.id()));
        var basin = pin.flatMap(Pin::at)
                .map(number -> moment.place(Place.basin(number)))
                .orElse("");
        var before = pin.map(Pin::before)
                .flatMap(moment.floor()::visit)
                .map(other -> moment.say("fact.before", moment.whereabouts(other)))
                .orElse("");
        var said = Moment.joined(" · ", basin, before);
        return Press.opens(
                moment.say(said.isEmpty() ? "press.pin" : "press.pinned"),
                said.isEmpty() ? moment.say("press.pin.hint") : said,
                "/visits/" + visit.id().value() + "/turn");
    }

    /** When to begin, by when for the sake of the others, by when for its own, and how long it takes. */
    String aside(Turn turn) {
        var must = outlook.mustStart(turn);
        var parts = Stream.of(
                turn.begin().isBefore(turn.water()) ? moment.say("basins.aside.begin", moment.clock(turn.begin())) : "",
                must.isBefore(turn.job().latest()) && !turn.isLate()
                        ? moment.say("basins.aside.others", moment.clock(must))
                        : "",
                moment.say("basins.aside", moment.clock(turn.job().latest())),
                moment.say(
                        turn.job().work().hasToner() ? "basins.aside.toner" : "basins.aside.takes",
                        minutes(turn.job().work().stay())));
        return Moment.joined(" · ", parts.toArray(String[]::new));
    }

    private static long minutes(Duration takes) {
        return (takes.toSeconds() + 59) / 60;
    }

    /** What a head's page says of its next turn. */
    List<Line> lines(Visit visit) {
        return outlook.turn(visit.id())
                .map(turn -> List.of(line(turn)))
                .or(() -> outlook.plan().without().stream()
                        .filter(job -> job.visit().equals(visit.id()))
                        .findFirst()
                        .map(job -> List.of(
                                new Line(moment.say("line.basin"), moment.say(without()), null, Urgency.MEDIUM))))
                .orElse(List.of());
    }

    private Line line(Turn turn) {
        var words = moment.say("line.basin.turn", letter(turn), moment.clock(turn.water()));
        return new Line(moment.say("line.basin"), words, turn.water(), turn.isLate() ? Urgency.MEDIUM : Urgency.CALM);
    }

    private String without() {
        return outlook.station().basins().isEmpty() ? "turn.no_basin" : "turn.no_hands";
    }

    /** Everything that does not fit, the worst first: who is late, and who has to make room for whom. */
    Troubles troubles() {
        var all = new ArrayList<String>();
        var without = outlook.plan().without();
        if (!without.isEmpty()) {
            all.add(moment.say(without() + ".named", named(without)));
        }
        var pinned = outlook.lateByPins();
        outlook.plan().late().forEach(turn -> all.add(late(turn, pinned.contains(turn))));
        outlook.squeezes().forEach(squeeze -> all.add(squeezed(squeeze)));
        return new Troubles(all);
    }

    private String named(List<Job> jobs) {
        return moment.listed("list.and", jobs.stream().map(this::where).toList());
    }

    private String late(Turn turn, boolean byPins) {
        return moment.say(
                byPins ? "turn.late.pinned" : "turn.late",
                where(turn.job()),
                moment.clock(turn.job().latest()),
                moment.clock(turn.water()),
                letter(turn));
    }

    private String squeezed(Squeeze squeeze) {
        return moment.say(
                "turn.squeeze",
                moment.listed(
                        "list.and",
                        List.of(
                                where(squeeze.first().job()),
                                where(squeeze.then().job()))),
                moment.clock(squeeze.by()),
                letter(squeeze.first()),
                where(squeeze.first().job()),
                moment.clock(squeeze.first().water()),
                moment.clock(squeeze.first().job().earliest()));
    }

    private String where(Job job) {
        return moment.floor().visit(job.visit()).map(moment::whereabouts).orElse("");
    }
}
