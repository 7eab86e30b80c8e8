package rinsebell.floor.basin;

import java.time.Duration;
import java.util.Optional;
import rinsebell.floor.report.Quantile;
import rinsebell.floor.salon.HouseNumbers;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.salon.Stretch;

/** How long things at the basins take: the middle of what was measured here, or a house number where too little was. */
final class Middles {
    private static final double MIDDLE = 0.5;
    private static final double THOUSANDTHS = 1_000;

    private final Salon salon;

    Middles(Salon salon) {
        this.salon = salon;
    }

    Duration rinsing(boolean foils) {
        return of(foils ? Stretch.RINSING_FOILS : Stretch.RINSING);
    }

    Duration toner() {
        return of(Stretch.TONER);
    }

    /** Which part of the time that is allowed heads usually stay on here; empty while that is not known. */
    Optional<Double> developing() {
        return middle(Stretch.DEVELOPING).map(thousandths -> thousandths / THOUSANDTHS);
    }

    private Duration of(Stretch stretch) {
        return Duration.ofSeconds(middle(stretch).map(Math::round).orElse((long) HouseNumbers.of(stretch, salon)));
    }

    private Optional<Double> middle(Stretch stretch) {
        var known = salon.times().known(stretch).stream()
                .mapToDouble(number -> number)
                .toArray();
        return known.length == 0 ? Optional.empty() : Optional.of(Quantile.of(known, MIDDLE));
    }

    /** One stay, with the toner that follows the rinse at the basin where one is to come. */
    Work work(Duration before, boolean foils, boolean toner) {
        if (!toner) {
            return Work.rinse(before, rinsing(foils));
        }
        var on = HouseNumbers.TONER_ON.compareTo(toner()) < 0 ? HouseNumbers.TONER_ON : toner();
        return Work.withToner(before, rinsing(foils), on, toner().minus(on));
    }
}
