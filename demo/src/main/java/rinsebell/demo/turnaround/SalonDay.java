package rinsebell.demo.turnaround;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.random.RandomGenerator;
import rinsebell.floor.Command;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.VisitId;

/** One day of a salon: whenever a chair is free, somebody soon sits there. */
final class SalonDay {
    private static final Duration OPEN = Duration.ofHours(8);

    /** The first come within an hour, and then each within half an hour of whoever sat there before, in seconds. */
    private static final int FIRST = 60 * 60;

    private static final int NEXT = 30 * 60;

    private final Book book;
    private final Pace pace;
    private final RandomGenerator dice;
    private final Agenda agenda;
    private final Basins basins;
    private final Instant closes;
    private final List<Promises> heard;

    private SalonDay(Book book, Pace pace, RandomGenerator dice, Instant opens, List<Promises> heard) {
        this.book = book;
        this.pace = pace;
        this.dice = dice;
        this.agenda = new Agenda(opens);
        this.basins = new Basins(book, agenda);
        this.closes = opens.plus(OPEN);
        this.heard = heard;
    }

    /** @param heard those who remember what was said of chairs */
    static void live(Book book, Pace pace, RandomGenerator dice, Instant opens, List<Promises> heard) {
        var day = new SalonDay(book, pace, dice, opens, heard);
        for (var chair = 1; chair <= book.floor().salon().rooms().chairs(); chair++) {
            day.comes(chair, FIRST);
        }
        day.agenda.live();
    }

    private void comes(int chair, int within) {
        var at = now().plusSeconds(dice.nextInt(within));
        if (at.isBefore(closes)) {
            at(at, () -> new Client(this, chair, Wish.any(dice)));
        }
    }

    Book book() {
        return book;
    }

    Pace pace() {
        return pace;
    }

    Basins basins() {
        return basins;
    }

    Instant now() {
        return agenda.now();
    }

    long press(Command command) {
        return book.press(command, now());
    }

    void at(Instant when, Runnable step) {
        agenda.at(when, step);
    }

    void after(Doing doing, Runnable step) {
        at(now().plus(pace.takes(doing)), step);
    }

    /** The moment at which it is promised when their chair is free. */
    void firstOn(VisitId visit) {
        heard.forEach(one -> one.firstOn(book.floor(), visit, now()));
    }

    /** @param waited for a basin */
    void left(VisitId visit, Place chair, Duration waited) {
        heard.forEach(one -> one.left(visit, now(), waited));
        if (chair instanceof Place.Chair of) {
            comes(of.number(), NEXT);
        }
    }
}
