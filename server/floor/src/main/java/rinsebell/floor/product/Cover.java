package rinsebell.floor.product;

/** What lies over an application. */
public enum Cover {
    OPEN,
    FOIL,
    FILM,
    CAP
}
