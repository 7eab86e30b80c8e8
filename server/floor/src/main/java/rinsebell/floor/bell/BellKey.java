package rinsebell.floor.bell;

/**
 * What makes two bells the same bell: a set-back of the anchoring fact moves the bell and keeps its acknowledgement.
 *
 * @param kind what it rings for
 * @param subject the number of the fact that made the visit, bowl or application it is about
 * @param anchor the number of the fact that it counts from; below zero for one that could not be saved
 */
public record BellKey(BellKind kind, long subject, long anchor) {
    /** Whether the fact that it counts from is on disk. Burning rings even when it could not be saved. */
    public boolean isSaved() {
        return anchor >= 0;
    }
}
