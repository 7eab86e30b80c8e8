package rinsebell.floor.product;

/** Heat that is given to a head. No heat is no value. */
public enum Heat {
    GENTLE_STEAM,
    WARM_AIR,
    DRYER
}
