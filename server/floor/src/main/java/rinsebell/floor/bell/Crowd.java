package rinsebell.floor.bell;

/** Those who share a screen. */
public enum Crowd {
    /** The assistants, at the basins. */
    ASSISTANTS,
    /** All stylists. */
    STYLISTS,
    DESK,
    /** Whoever is in the room. */
    WALL
}
