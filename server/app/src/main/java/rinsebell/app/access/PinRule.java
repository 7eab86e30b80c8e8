package rinsebell.app.access;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Which PINs are too easy: fewer than six figures, runs and repeats (after NIST SP 800-63B-4, section 3.1.1.2, "repetitive
 * or sequential").
 */
final class PinRule {
    static final int FEWEST = 6;
    static final int MOST = 12;

    private static final int SAME_IN_A_ROW = 3;
    private static final int RUN = 4;

    private PinRule() {}

    /** What speaks against a PIN. */
    enum Flaw {
        NOT_FIGURES,
        TOO_SHORT,
        TOO_LONG,
        /** Such as 1234 or 8765 in it. */
        RUN,
        /** Such as 000 in it, or 121212. */
        REPEATS
    }

    /** The first thing that speaks against it; empty for a good one. */
    static Optional<Flaw> flaw(String pin) {
        if (!pin.chars().allMatch(one -> one >= '0' && one <= '9')) {
            return Optional.of(Flaw.NOT_FIGURES);
        }
        if (pin.length() < FEWEST || pin.length() > MOST) {
            return Optional.of(pin.length() < FEWEST ? Flaw.TOO_SHORT : Flaw.TOO_LONG);
        }
        if (goesOn(pin, 1, RUN) || goesOn(pin, -1, RUN)) {
            return Optional.of(Flaw.RUN);
        }
        return goesOn(pin, 0, SAME_IN_A_ROW) || isOneBlock(pin) ? Optional.of(Flaw.REPEATS) : Optional.empty();
    }

    /** Whether so many figures in a row have this step between them. */
    private static boolean goesOn(String pin, int step, int many) {
        return IntStream.rangeClosed(0, pin.length() - many)
                .anyMatch(from -> IntStream.range(from + 1, from + many)
                        .allMatch(at -> pin.charAt(at) - pin.charAt(at - 1) == step));
    }

    /** Whether it is the same figures over and over. */
    private static boolean isOneBlock(String pin) {
        return IntStream.rangeClosed(1, pin.length() / 2)
                .filter(size -> pin.length() % size == 0)
                .anyMatch(size ->
                        pin.substring(0, size).repeat(pin.length() / size).equals(pin));
    }
}
