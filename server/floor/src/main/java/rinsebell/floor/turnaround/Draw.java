package rinsebell.floor.turnaround;

import rinsebell.floor.salon.Stretch;

/**
 * Numbers as if drawn by chance, and yet always the same: each hangs only on what it is for. So one more client on the floor
 * changes nobody else's numbers, and two looks at the same floor say the same. The mixing is SplitMix64's (Steele, Lea and
 * Flood 2014; public domain constants).
 */
final class Draw {
    private static final long SEED = 0x52696e7365L;
    private static final long STEP = 0x9e3779b97f4a7c15L;
    private static final int KINDS = Stretch.values().length;
    private static final double UNIT = 0x1.0p-53;

    private Draw() {}

    /**
     * Above 0 and below 1.
     *
     * @param nth which of several of one kind, from 0
     */
    static double of(long visit, Stretch stretch, int nth, int run) {
        var what = nth * KINDS + stretch.ordinal();
        var mixed = mix(mix(mix(SEED + visit * STEP) + what * STEP) + run * STEP);
        return ((mixed >>> 11) + 0.5) * UNIT;
    }

    private static long mix(long number) {
        var first = (number ^ (number >>> 30)) * 0xbf58476d1ce4e5b9L;
        var second = (first ^ (first >>> 27)) * 0x94d049bb133111ebL;
        return second ^ (second >>> 31);
    }
}
