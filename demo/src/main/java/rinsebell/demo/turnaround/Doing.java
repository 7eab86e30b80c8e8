package rinsebell.demo.turnaround;

/** What takes time in a salon. */
enum Doing {
    /** From the end of one thing until somebody comes to begin the next. */
    WAITING(3, 20),
    MIXING(5, 15),
    /** Nobody goes on for longer: the bowl would not be usable. */
    APPLYING(20, 38),
    /** To the basin. */
    WALKING(1, 4),
    FOILS_OUT(4, 15),
    RINSING(8, 40),
    RINSING_FOILS(8, 40),
    /** Longer than that it must not be on. */
    TONING(20, 25),
    CUTTING(30, 115),
    DRYING(25, 115),
    SETTLING(6, 60);

    private final int house;
    private final int most;

    Doing(int house, int most) {
        this.house = house;
        this.most = most;
    }

    /** What the house takes it for, in minutes; where it says nothing, what is common practice, no source. */
    int house() {
        return house;
    }

    /** It never takes longer, in minutes. */
    int most() {
        return most;
    }
}
