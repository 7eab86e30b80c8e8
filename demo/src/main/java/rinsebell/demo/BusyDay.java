package rinsebell.demo;

import static rinsebell.app.shelf.InventedProducts.DEVELOPER_20;
import static rinsebell.app.shelf.InventedProducts.POWDER;
import static rinsebell.floor.bowl.BowlReason.FIRST;
import static rinsebell.floor.product.Cover.FOIL;
import static rinsebell.floor.product.Zone.OFF_SCALP;
import static rinsebell.floor.visit.StrandFinding.Tone.ORANGE;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.function.IntFunction;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Gate;

/**
 * A salon of any size with foils on every head, looked at twice; for measurements.
 *
 * @param entries how it was pressed in
 * @param floor what came of it
 */
public record BusyDay(List<Ledger.Entry> entries, Floor floor) {
    private static final int CHAIRS_OF_A_BASIN = 8;
    private static final Duration LOOK_AGAIN = Duration.ofMinutes(10);

    /** From now, where it has been on for as long as it is here. */
    private static final Duration UNTIL_RINSE_RINGS = Duration.ofMinutes(12);

    /**
     * Tells the day.
     *
     * @param chairs all of them taken
     * @param now the instant that it has come to
     */
    public static BusyDay of(int chairs, Instant now, ZoneId zone) {
        return of(chairs, now, zone, chair -> ago(4 - chair % 3), chair -> Duration.ZERO);
    }

    /**
     * The same, with a look at each head falling due one after the other.
     *
     * @param first how long after now the first is due
     * @param apart how long after it each further one
     */
    public static BusyDay falling(int chairs, Instant now, ZoneId zone, Duration first, Duration apart) {
        return of(
                chairs,
                now,
                zone,
                chair -> LOOK_AGAIN.minus(first).minus(apart.multipliedBy(chair - 1)),
                chair -> Duration.ZERO);
    }

    /**
     * The same, with a rinse of each head beginning to ring one after the other.
     *
     * @param first how long after now the first rings
     * @param apart how long after it each further one
     */
    public static BusyDay rinsing(int chairs, Instant now, ZoneId zone, Duration first, Duration apart) {
        return of(
                chairs,
                now,
                zone,
                chair -> ago(4 - chair % 3),
                chair -> UNTIL_RINSE_RINGS.minus(first).minus(apart.multipliedBy(chair - 1)));
    }

    private static BusyDay of(
            int chairs, Instant now, ZoneId zone, IntFunction<Duration> lastLook, IntFunction<Duration> longer) {
        var script = new Script(now);
        var basins = Math.max(2, chairs / CHAIRS_OF_A_BASIN);
        var cast = new Cast(script, new House(chairs, basins, chairs, zone, true));
        for (var chair = 1; chair <= chairs; chair++) {
            sit(chair, script, cast, lastLook.apply(chair), longer.apply(chair));
        }
        script.play();
        return new BusyDay(script.entries(), script.floor());
    }

    /** @param longer how much longer than in the others it is on */
    private static void sit(int chair, Script script, Cast cast, Duration lastLook, Duration longer) {
        var stylist = List.of(cast.tamsin, cast.piet, cast.noor).get(chair % 3);
        new Guest(script, "G. " + chair, stylist)
                .arrives(ago(50).plus(longer), Place.chair(chair), fine())
                .mixes(ago(35).plus(longer), FIRST, cast.grams(60, POWDER), cast.grams(60, DEVELOPER_20))
                .putsOn(ago(33).plus(longer), Area.FOILS_ALL, OFF_SCALP, FOIL)
                .lastOn(ago(20 - chair % 5))
                .looks(ago(14), 6, ORANGE, LOOK_AGAIN)
                .looks(lastLook, 7, ORANGE, LOOK_AGAIN);
    }

    private static Gate fine() {
        return new Gate(Gate.SkinTest.NOT_DONE, Gate.Scalp.FINE, Gate.YesNo.NO, Gate.Metal.NONE, Gate.YesNo.NO);
    }

    private static Duration ago(long minutes) {
        return Duration.ofMinutes(minutes);
    }
}
