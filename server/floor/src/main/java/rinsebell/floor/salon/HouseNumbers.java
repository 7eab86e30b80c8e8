package rinsebell.floor.salon;

import java.time.Duration;

/** How long things take while too little of them was measured. What nobody says otherwise is common practice, no source. */
public final class HouseNumbers {
    /** From the first of a bowl on to its rinse-by, where no directions say it yet. */
    public static final Duration BOWL = Duration.ofMinutes(50);

    /** Putting a toner on. */
    public static final Duration TONER_ON = Duration.ofMinutes(5);

    private static final Duration SETTLING = Duration.ofMinutes(6);

    /** Heads mostly come off late in the time that is allowed. */
    private static final int DEVELOPING = 850;

    private HouseNumbers() {}

    /** In the unit of the {@link Stretch}. That anybody waits between two things is only said where it was measured. */
    public static int of(Stretch stretch, Salon salon) {
        var policy = salon.policy();
        return switch (stretch) {
            case APPLYING -> seconds(policy.applying());
            case DEVELOPING -> DEVELOPING;
            case RINSING, RINSING_FOILS -> seconds(policy.working().rinsing());
            case TONER -> seconds(salon.times().of(Service.TONER));
            case CUT -> seconds(salon.times().of(Service.CUT));
            case BLOW_DRY -> seconds(salon.times().of(Service.BLOW_DRY));
            case SETTLING -> seconds(SETTLING);
            case WAITING -> 0;
        };
    }

    private static int seconds(Duration takes) {
        return Math.toIntExact(takes.toSeconds());
    }
}
