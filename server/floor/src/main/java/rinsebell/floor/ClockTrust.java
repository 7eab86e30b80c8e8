package rinsebell.floor;

/** Whether the salon's time can be believed; until a person has said so it is told on every screen. */
public enum ClockTrust {
    /** The machine's clock agrees with the salon's. */
    AGREES,
    /** The machine's clock was set, and nobody has said yet that it is right. */
    SET,
    /**
     * The machine started, by its own clock, before what was already recorded, as one without a battery does after a
     * power cut. Time that passed while it was off may not have been counted, so everything may be due earlier than it
     * looks.
     */
    BEHIND
}
