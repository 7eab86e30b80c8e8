package rinsebell.demo.faults;

/** The process, or the power, is gone in the middle of what it did: nothing after this happens. */
final class Crash extends Error {
    private static final long serialVersionUID = 1L;

    Crash(Point at) {
        super(at.name(), null, false, false);
    }

    /** Where in the life of a press it can happen, in order. */
    enum Point {
        DECIDED,
        /** Half of the bytes are with the system. */
        WRITING,
        WRITTEN,
        FORCED,
        COMMITTED,
        SWAPPED,
        PUSHED,
        ANSWERED
    }
}
