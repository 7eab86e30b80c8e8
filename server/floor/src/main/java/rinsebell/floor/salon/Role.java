package rinsebell.floor.salon;

/** What somebody does in the salon. */
public enum Role {
    ASSISTANT,
    STYLIST,
    DESK,
    MANAGER
}
