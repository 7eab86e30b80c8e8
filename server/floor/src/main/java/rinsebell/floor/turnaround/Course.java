package rinsebell.floor.turnaround;

import java.time.Duration;
import java.time.Instant;
import rinsebell.floor.salon.HouseNumbers;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Stretch;

/** How it goes on for one guest in one run, from an instant on; all in epoch seconds. */
final class Course {
    private static final double THOUSANDTHS = 1_000;
    private static final double MINUTE = 60;

    private final Guest guest;
    private final Lengths lengths;
    private final double from;
    private final int run;

    Course(Guest guest, Lengths lengths, double from, int run) {
        this.guest = guest;
        this.lengths = lengths;
        this.from = from;
        this.run = run;
    }

    static double seconds(Instant at) {
        return at.equals(Instant.MIN) ? Double.NEGATIVE_INFINITY : at.toEpochMilli() / THOUSANDTHS;
    }

    /** When they come to a basin with what is on, or with the bowl that is to come; where they need none, at once. */
    double water() {
        return guest.hair().map(this::water).orElseGet(() -> guest.needsBasin() ? bowl() : from);
    }

    private double water(Hair hair) {
        var window = window(hair);
        var due = hair.decided == null ? undecided(hair, seconds(window.latest())) : seconds(hair.decided);
        return Math.max(Math.max(from, seconds(window.earliest())), due);
    }

    /** Somebody will decide as it is done here, but hardly before they want to look again. */
    private double undecided(Hair hair, double latest) {
        var firstOn = seconds(hair.firstOn);
        var allowed = latest - firstOn;
        if (allowed <= 0) {
            return latest;
        }
        var gone = THOUSANDTHS * (from - firstOn) / allowed;
        var share = lengths.of(Stretch.DEVELOPING, gone, draw(Stretch.DEVELOPING, 0)) / THOUSANDTHS;
        return Math.max(firstOn + share * allowed, Math.min(seconds(hair.lookAgain), latest));
    }

    /** Where directions count from the last on, it matters how long somebody still puts it on. */
    private Hair.Window window(Hair hair) {
        if (hair.goesOnSince == null) {
            return hair.window;
        }
        var gone = from - seconds(hair.goesOnSince);
        var minutes = Math.round(lengths.of(Stretch.APPLYING, gone, draw(Stretch.APPLYING, 0)) / MINUTE);
        return hair.window(hair.goesOnSince.plus(Duration.ofMinutes(minutes)));
    }

    /** Nobody knows which directions it will have. */
    private double bowl() {
        var on = services(free(from), 0, afterBowl());
        var applying = length(Stretch.APPLYING, 0);
        var developing = length(Stretch.DEVELOPING, 0) / THOUSANDTHS * HouseNumbers.BOWL.toSeconds();
        return on + Math.max(applying, developing);
    }

    /** How long they take the basin. */
    private double stay() {
        var foils = guest.hair().filter(hair -> hair.hasFoils).isPresent();
        var rinse = length(foils ? Stretch.RINSING_FOILS : Stretch.RINSING, 0);
        return guest.toner() ? rinse + length(Stretch.TONER, 0) + length(Stretch.RINSING, 1) : rinse;
    }

    /** When they leave; a basin that they need on the way is taken. */
    double end(BasinTimes basins, double water) {
        var back = guest.needsBasin() ? basins.end(water, stay()) : water;
        return services(free(back), afterBowl(), guest.toCome().size()) + length(Stretch.SETTLING, 0);
    }

    /** The place of the first that is done after a bowl that is still to come. */
    private int afterBowl() {
        return guest.toCome().indexOf(Service.BOWL) + 1;
    }

    /** When what goes on is over. */
    private double free(double at) {
        return guest.going().map(going -> Math.max(at, over(going))).orElse(at);
    }

    private double over(Guest.Going going) {
        var stretch = Lengths.stretch(going.service());
        var since = seconds(going.since());
        return since + lengths.of(stretch, from - since, draw(stretch, 0));
    }

    private double services(double begin, int first, int end) {
        var at = begin;
        for (var i = first; i < end; i++) {
            var service = guest.toCome().get(i);
            // Counted from the last, so that what is over changes no number of what is still to come.
            var nth = guest.toCome().size() - i;
            at += length(Stretch.WAITING, nth);
            at += service == Service.BOWL ? 0 : length(Lengths.stretch(service), nth);
        }
        return at;
    }

    private double length(Stretch stretch, int nth) {
        return lengths.of(stretch, draw(stretch, nth));
    }

    private double draw(Stretch stretch, int nth) {
        return Draw.of(guest.number(), stretch, nth, run);
    }
}
