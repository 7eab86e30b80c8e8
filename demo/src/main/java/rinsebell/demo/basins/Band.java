package rinsebell.demo.basins;

/** How much of their time the basins are in use, as shares from one to another. */
enum Band {
    QUIET(0.60, 0.75),
    BUSY(0.75, 0.85),
    FULL(0.85, 0.95);

    private final double from;
    private final double until;

    Band(double from, double until) {
        this.from = from;
        this.until = until;
    }

    double from() {
        return from;
    }

    double until() {
        return until;
    }
}
