package rinsebell.floor.turnaround;

import java.util.EnumMap;
import java.util.Map;
import rinsebell.floor.salon.HouseNumbers;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Stretch;

/** How long the parts of a visit may take in this salon, each in the unit of its {@link Stretch}. */
final class Lengths {
    /** How far a house number is missed: seldom by more than that. House numbers. */
    private static final double QUICK = 0.75;

    private static final double SLOW = 1.5;

    /** Heads come off between half of the allowed time and all of it. House numbers. */
    private static final double DEVELOPS_LEAST = 500;

    private static final double DEVELOPS_MOST = 1_000;

    private static final int HALVINGS = 12;

    private final Map<Stretch, Lasting> all = new EnumMap<>(Stretch.class);

    Lengths(Salon salon) {
        for (var stretch : Stretch.values()) {
            all.put(stretch, lasting(stretch, salon));
        }
    }

    private static Lasting lasting(Stretch stretch, Salon salon) {
        double house = HouseNumbers.of(stretch, salon);
        var known = salon.times().known(stretch);
        return stretch == Stretch.DEVELOPING
                ? Lasting.of(known, DEVELOPS_LEAST, house, DEVELOPS_MOST)
                : Lasting.of(known, QUICK * house, house, SLOW * house);
    }

    static Stretch stretch(Service service) {
        return switch (service) {
            case BOWL -> Stretch.DEVELOPING;
            case TONER -> Stretch.TONER;
            case CUT -> Stretch.CUT;
            case BLOW_DRY -> Stretch.BLOW_DRY;
        };
    }

    /** So long it takes in one part of all cases at most. */
    double of(Stretch stretch, double part) {
        var lasting = all.get(stretch);
        if (lasting == null) {
            throw new IllegalStateException("nobody says how long this takes: " + stretch);
        }
        return lasting.at(part);
    }

    /** The same of what has gone on for a while: among the lengths that are still possible, or over now. */
    double of(Stretch stretch, double gone, double part) {
        var least = of(stretch, 0) > gone ? 0 : partGone(stretch, gone);
        return Math.max(gone, of(stretch, least + (1 - least) * part));
    }

    /** Which part of all cases is over by then. */
    private double partGone(Stretch stretch, double gone) {
        var low = 0.0;
        var high = 1.0;
        for (var i = 0; i < HALVINGS; i++) {
            var middle = (low + high) / 2;
            if (of(stretch, middle) <= gone) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
