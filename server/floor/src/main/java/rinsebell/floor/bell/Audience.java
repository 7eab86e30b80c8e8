package rinsebell.floor.bell;

/** Whom a stage of a bell is for, first of all. */
public enum Audience {
    /** Whoever looks after the client. */
    STYLIST,
    /** Assistants at the basins, whoever looks after the client, and the wall. */
    BASINS,
    /** The desk and all stylists. */
    DESK,
    EVERYONE
}
