package rinsebell.floor.salon;

/** A part of a visit of which the salon learns how long it takes. The numbers are seconds where nothing else is said. */
public enum Stretch {
    /** From the first of a bowl on to the last. */
    APPLYING,
    /**
     * From the first of a bowl on until it is to be rinsed, as thousandths of the time until its rinse-by: whoever then
     * waits for a basin develops no longer for that.
     */
    DEVELOPING,
    /** At the basin, from water to the next thing, without foils. */
    RINSING,
    /** The same for a head with foils. */
    RINSING_FOILS,
    /** From the first of a toner on to its water. */
    TONER,
    CUT,
    BLOW_DRY,
    /** From the end of the last thing that is done to leaving. */
    SETTLING,
    /** From the end of one thing until the next service is begun: somebody has to come. */
    WAITING
}
