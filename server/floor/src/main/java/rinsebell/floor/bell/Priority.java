package rinsebell.floor.bell;

/** How a bell rings; the three that sound are the priorities of IEC 60601-1-8. */
public enum Priority {
    /** Shown, and no more. */
    SILENT,
    LOW,
    MEDIUM,
    HIGH
}
