package rinsebell.demo.faults;

/** The Wi-Fi between a device and the back room: it takes its time, and now and then carries nothing. */
final class Air {
    private static final int USUAL = 40;
    private static final int BUSY = 250;
    private static final int VERY_SLOW = 2_800;

    private final Dice dice;
    private boolean carries = true;

    Air(Dice dice) {
        this.dice = dice;
    }

    boolean carries() {
        return carries;
    }

    void carries(boolean does) {
        carries = does;
    }

    /** How long something takes one way, in milliseconds. */
    long way() {
        return 2 + dice.below(dice.onceIn(12) ? BUSY : USUAL);
    }

    /** The same for what nobody waits for, which is sometimes far slower. */
    long wayOfARoutine() {
        return dice.onceIn(25) ? BUSY + dice.below(VERY_SLOW - BUSY) : way();
    }
}
