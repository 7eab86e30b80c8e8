package rinsebell.demo.faults;

/** What must hold after every step of a day, whatever fails. */
enum Rule {
    /** A fact that was answered or shown is on the floor of every later start, as it was. */
    ANSWERED_IS_KEPT,
    /** What somebody pressed once counts once, however often it was sent. */
    COUNTS_ONCE,
    /** The same press is answered the same. */
    ANSWERED_THE_SAME,
    /** What was pressed comes to an answer as soon as the way is free. */
    PRESS_ARRIVES,
    /** What was pressed happened when it was pressed, to the second. */
    HAPPENED_WHEN_PRESSED,
    /** The floor, and every bell, is what all facts in order make of it. */
    FLOOR_IS_ITS_FACTS,
    /** The salon's clock goes with true time, whatever is done to the machine's; only a person moves it. */
    CLOCK_HOLDS,
    /** A turn of a bell sounds on each device that it is for within a second. */
    SOUNDS_IN_TIME,
    /** Nothing sounds that does not ring. */
    SOUNDS_NOTHING_ELSE,
    /** A device sounds a turn once. */
    SOUNDS_ONCE,
    /** A device that lost the server finds it again by itself. */
    SCREENS_COME_BACK
}
