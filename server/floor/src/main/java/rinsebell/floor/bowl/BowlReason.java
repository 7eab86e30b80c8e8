package rinsebell.floor.bowl;

/** Why a bowl was mixed. */
public enum BowlReason {
    FIRST,
    /** The same job goes on. */
    REFILL,
    NEXT_AREA,
    /** Another lightening round, after rinsing. */
    ANOTHER_ROUND,
    TONE
}
