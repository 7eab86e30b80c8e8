package rinsebell.floor.visit;

/** A part of a head that gets a bowl of its own. */
public enum Area {
    WHOLE_HEAD(false),
    REGROWTH(false),
    LENGTHS(false),
    ENDS(false),
    HAIRLINE(false),
    FREE_HAND(false),
    FOILS_ALL(true),
    FOILS_TOP(true),
    FOILS_LEFT(true),
    FOILS_RIGHT(true),
    FOILS_BACK(true);

    private final boolean foils;

    Area(boolean foils) {
        this.foils = foils;
    }

    /** Whether foils have to be taken out before the basin. */
    public boolean isFoils() {
        return foils;
    }
}
