package rinsebell.demo.basins;

/**
 * What happened on a day, as somebody who only watches would write it down.
 *
 * @param at second of the day
 * @param what happened
 * @param head to whom
 * @param basin at which, from 1; 0 at none
 */
record Happened(long at, What what, int head, int basin) {
    /** What can happen to a head. */
    enum What {
        ARRIVES,
        SEATED,
        /** Somebody begins to mix for it. */
        MIXES,
        /** The first is on. */
        ON,
        /** Somebody takes it in hand: foils out, and the walk. */
        BEGINS,
        PREPARED,
        WATER,
        /** It is alone at the basin. */
        HANDS_OFF,
        HANDS_ON,
        LEAVES
    }
}
