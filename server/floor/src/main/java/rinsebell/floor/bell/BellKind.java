package rinsebell.floor.bell;

/** What bells ring for. */
public enum BellKind {
    BOWL_WAITING,
    STRAND_CHECK,
    SCALP_CHECK,
    LAST_ON_MISSING,
    READY,
    HEAT_END,
    COVER_END,
    FORBIDDEN_HEAT,
    FORBIDDEN_COVER,
    FORBIDDEN_ZONE,
    FORBIDDEN_MIXTURE,
    PASSED_GATE,
    GATE_OPEN,
    LEFT_WITH_IT_ON,
    RINSE,
    TINGLING,
    BURNING,
    HOT_FOIL,
    SCALP_AFTER_RINSE,
    ROUND_OVER,
    BASINS_CLASH
}
