package rinsebell.floor.turnaround;

import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Stretch;

/** How long the parts of a visit may take in this salon. */
final class Lengths {
    /** From the first of a bowl on to its rinse-by, where no directions say it yet; common practice, no source. */
    static final double BOWL = Duration.ofMinutes(50).toSeconds();

    /** Paying and leaving; common practice, no source. */
    private static final Duration SETTLING = Duration.ofMinutes(6);

    private static final double THOUSANDTHS = 1_000;

    /** Heads come off between half of the allowed time and all of it, mostly late. House numbers, in thousandths. */
    private static final double DEVELOPS_LEAST = 500;

    private static final double DEVELOPS_USUAL = 850;
    private static final double DEVELOPS_MOST = 1_000;

    private final Salon salon;
    private final Map<Stretch, Lasting> all = new EnumMap<>(Stretch.class);

    Lengths(Salon salon) {
        this.salon = salon;
        var working = salon.policy().working();
        put(Stretch.APPLYING, salon.policy().applying());
        put(Stretch.RINSING, working.rinsing());
        put(Stretch.RINSING_FOILS, working.rinsing());
        put(Stretch.TONER, salon.times().of(Service.TONER));
        put(Stretch.CUT, salon.times().of(Service.CUT));
        put(Stretch.BLOW_DRY, salon.times().of(Service.BLOW_DRY));
        put(Stretch.SETTLING, SETTLING);
        all.put(
                Stretch.DEVELOPING,
                Lasting.of(known(Stretch.DEVELOPING), DEVELOPS_LEAST, DEVELOPS_USUAL, DEVELOPS_MOST));
    }

    private void put(Stretch stretch, Duration house) {
        all.put(stretch, Lasting.of(known(stretch), house));
    }

    private List<Integer> known(Stretch stretch) {
        return salon.times().known(stretch);
    }

    static Stretch stretch(Service service) {
        return switch (service) {
            case BOWL -> Stretch.DEVELOPING;
            case TONER -> Stretch.TONER;
            case CUT -> Stretch.CUT;
            case BLOW_DRY -> Stretch.BLOW_DRY;
        };
    }

    /** In seconds. */
    double of(Stretch stretch, double part) {
        return lasting(stretch).at(part);
    }

    double rinsing(boolean foils, double part) {
        return of(foils ? Stretch.RINSING_FOILS : Stretch.RINSING, part);
    }

    /** As a share of the time that is allowed. */
    double developing(double part) {
        return lasting(Stretch.DEVELOPING).at(part) / THOUSANDTHS;
    }

    /**
     * When something is over that has gone on for a while: drawn among the lengths that are still possible.
     *
     * @param since in seconds
     * @param now in seconds
     */
    double over(Stretch stretch, double since, double now, double part) {
        var gone = now - since;
        var least = partGone(stretch, gone);
        return Math.max(now, since + of(stretch, least + (1 - least) * part));
    }

    /** Which part of all cases is over by then. */
    private double partGone(Stretch stretch, double gone) {
        var low = 0.0;
        var high = 1.0;
        for (var i = 0; i < 12; i++) {
            var middle = (low + high) / 2;
            if (of(stretch, middle) <= gone) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private Lasting lasting(Stretch stretch) {
        var lasting = all.get(stretch);
        if (lasting == null) {
            throw new IllegalStateException("nobody says how long this takes: " + stretch);
        }
        return lasting;
    }
}
