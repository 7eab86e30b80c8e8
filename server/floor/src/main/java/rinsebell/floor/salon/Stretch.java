package rinsebell.floor.salon;

/** A part of a visit of which the salon learns how long it takes. The numbers are seconds where nothing else is said. */
public enum Stretch {
    /** From the first of a bowl on to the last. */
    APPLYING,
    /** From the first of a bowl on to water, as thousandths of the time until its rinse-by. */
    DEVELOPING,
    /** At the basin, from water to the next thing, without foils. */
    RINSING,
    /** The same for a head with foils. */
    RINSING_FOILS,
    /** From the first of a toner on to its water. */
    TONER,
    CUT,
    BLOW_DRY,
    /** From the end of the last service to leaving. */
    SETTLING
}
