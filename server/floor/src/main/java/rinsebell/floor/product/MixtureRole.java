package rinsebell.floor.product;

import java.util.List;
import java.util.stream.IntStream;

/** What a product does in a mixture. It follows from the directions of all that is in it. */
public enum MixtureRole {
    /** Activated by developer, which is measured against it. */
    DEVELOPED,
    DEVELOPER,
    /** Added to another, whose directions say how much of it: it is left out of the ratio to developer. */
    ADDED,
    /** Used as it is. */
    PLAIN;

    /** The role of each, in the order given. */
    public static List<MixtureRole> of(List<Directions> mixture) {
        return IntStream.range(0, mixture.size())
                .mapToObj(i -> roleOf(i, mixture))
                .toList();
    }

    private static MixtureRole roleOf(int i, List<Directions> mixture) {
        var one = mixture.get(i);
        if (one.kind() == Kind.DEVELOPER) {
            return DEVELOPER;
        }
        if (isAddedToAnother(i, mixture)) {
            return ADDED;
        }
        return one.mixing().takesDeveloper() ? DEVELOPED : PLAIN;
    }

    private static boolean isAddedToAnother(int i, List<Directions> mixture) {
        var kind = mixture.get(i).kind();
        return IntStream.range(0, mixture.size())
                .filter(other -> other != i)
                .mapToObj(other -> mixture.get(other).mixing())
                .flatMap(mixing -> mixing.pairings().stream())
                .anyMatch(pairing -> pairing.with() == kind && pairing.limit().isPresent());
    }
}
