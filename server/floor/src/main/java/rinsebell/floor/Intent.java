package rinsebell.floor;

/** Whether somebody wants to do it, or did it. */
public enum Intent {
    /** Only intended: refused where a restriction forbids it. */
    PLAN,
    /** It has been done: written down whatever forbids it, and then it rings. */
    FACT
}
