package rinsebell.floor.product;

/** Whether a mixture touches the scalp. */
public enum Zone {
    ON_SCALP,
    OFF_SCALP
}
