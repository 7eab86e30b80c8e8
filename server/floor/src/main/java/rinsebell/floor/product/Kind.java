package rinsebell.floor.product;

/** The kinds of product that a colour station uses. */
public enum Kind {
    MILD_CREAM_LIGHTENER(true, true),
    STRONG_CREAM_LIGHTENER(true, true),
    POWDER_LIGHTENER(true, true),
    HIGH_LIFT_COLOUR(false, true),
    PERMANENT_COLOUR(false, false),
    DEPOSIT_COLOUR(false, false),
    COLOUR_REMOVER(false, false),
    CLEAR_ADDITIVE(false, false),
    DEVELOPER(false, false);

    private final boolean lightener;
    private final boolean hardDevelopment;

    Kind(boolean lightener, boolean hardDevelopment) {
        this.lightener = lightener;
        this.hardDevelopment = hardDevelopment;
    }

    /** Takes the hair's own colour out; such a round is what "another round, off scalp only" speaks of. */
    public boolean isLightener() {
        return lightener;
    }

    /** The end of its development, and a decision to rinse, are hard limits (lightener and high lift). */
    public boolean hasHardDevelopment() {
        return hardDevelopment;
    }
}
