package rinsebell.floor;

/** Why a plan is refused, or what to be careful about. Each has its words in the message bundle. */
public enum ReasonCode {
    // In the order of harm: what can hurt most comes first.
    NO_CHEMICAL_ON_SCALP_TODAY(Basis.CARE),
    SCALP_NOT_SOUND(Basis.GATE),
    DYE_REACTION(Basis.GATE),
    UNDER_16(Basis.GATE),
    NO_SKIN_TEST(Basis.GATE),
    METAL_ON_HAIR(Basis.GATE),
    GATE_OPEN(Basis.GATE),
    PEROXIDE_OVER_LAW(Basis.LAW),
    AMMONIA_OVER_LAW(Basis.LAW),
    OFF_SCALP_PRODUCT(Basis.DIRECTIONS),
    ROUND_OFF_SCALP_ONLY(Basis.CARE),
    NEVER_ON_SCALP_TOGETHER(Basis.DIRECTIONS),
    STRENGTH_NOT_ON_SCALP(Basis.DIRECTIONS),
    NEVER_MIXED(Basis.DIRECTIONS),
    STRENGTH_NOT_ALLOWED(Basis.DIRECTIONS),
    HEAT_NOT_ALLOWED(Basis.DIRECTIONS),
    COVER_NOT_ALLOWED(Basis.DIRECTIONS),
    BOWL_PAST_USE(Basis.DIRECTIONS),
    TOO_MUCH_DEVELOPER(Basis.DIRECTIONS),
    TOO_LITTLE_DEVELOPER(Basis.DIRECTIONS),
    NO_DEVELOPER(Basis.DIRECTIONS),
    TOO_MUCH_ADDED(Basis.DIRECTIONS),
    RECIPE_UNKNOWN(Basis.CARE),
    STILL_ON(Basis.CARE),
    // To be careful about: these refuse nothing.
    /** More than 20 volumes, and a leaflet that says nothing of it. Common practice, no source. */
    STRONG_ON_SCALP(Basis.CARE, true),
    NO_COMMON_RINSE(Basis.DIRECTIONS, true),
    READY_AFTER_RINSE_BY(Basis.DIRECTIONS, true),
    BASIN_NOT_FREE(Basis.SENSE, true),
    CONTAINS_AMMONIA(Basis.LAW, true),
    CONTAINS_PEROXIDE(Basis.LAW, true),
    // What cannot be, whatever is answered.
    SALON_NOT_SET_UP(Basis.SENSE),
    NOT_KNOWN(Basis.SENSE),
    VISIT_OVER(Basis.SENSE),
    PLACE_TAKEN(Basis.SENSE),
    FLOOR_FULL(Basis.SENSE),
    NO_SUCH_PLACE(Basis.SENSE),
    BASIN_CLOSED(Basis.SENSE),
    DAY_WOULD_TURN(Basis.SENSE),
    NOT_ON(Basis.SENSE),
    BOWL_GONE(Basis.SENSE),
    BOWL_IN_USE(Basis.SENSE),
    BOWL_EMPTY(Basis.SENSE),
    HEAT_NOT_ON(Basis.SENSE),
    IN_THE_FUTURE(Basis.SENSE),
    TOO_EARLY(Basis.SENSE),
    TOO_LATE(Basis.SENSE),
    CANNOT_BE_CORRECTED(Basis.SENSE),
    OTHERS_HANG_ON_IT(Basis.SENSE),
    BELL_NOT_RINGING(Basis.SENSE),
    BELL_TOO_HIGH(Basis.SENSE),
    SHELVED_TOO_LONG(Basis.SENSE);

    /** Where a reason comes from. */
    public enum Basis {
        DIRECTIONS,
        HOUSE,
        GATE,
        LAW,
        /** The usual care of the trade. */
        CARE,
        /** It contradicts what is known to have happened: no answer makes it true. */
        SENSE
    }

    private final Basis basis;
    private final boolean caution;

    ReasonCode(Basis basis) {
        this(basis, false);
    }

    ReasonCode(Basis basis, boolean caution) {
        this.basis = basis;
        this.caution = caution;
    }

    public Basis basis() {
        return basis;
    }

    /** Refuses nothing: said beforehand, and that is all. */
    public boolean isCaution() {
        return caution;
    }

    /** A restriction: a plan that breaks it is refused, but as a fact it is written down. */
    public boolean isRestriction() {
        return !caution && basis != Basis.SENSE;
    }
}
