package rinsebell.floor.product;

import java.util.List;
import java.util.Set;
import rinsebell.floor.unit.Percent;

/**
 * How a product is mixed.
 *
 * @param mixtures the mixtures with developer that the directions allow; none for a product that takes no developer
 * @param strengths developer strengths (peroxide % w/w) it may be mixed with; empty for any
 * @param strengthsOnScalp those it may be mixed with when the mixture touches the scalp; empty for any of
 *     {@code strengths}
 * @param pairings what may and may not be mixed with it; a kind that is not named is allowed
 */
public record Mixing(
        List<Mixture> mixtures, Set<Percent> strengths, Set<Percent> strengthsOnScalp, List<Pairing> pairings) {
    public static final Mixing PLAIN = new Mixing(List.of(), Set.of(), Set.of(), List.of());

    public Mixing {
        mixtures = List.copyOf(mixtures);
        strengths = Set.copyOf(strengths);
        strengthsOnScalp = Set.copyOf(strengthsOnScalp);
        pairings = List.copyOf(pairings);
    }

    /** Whether the product is activated by developer. */
    public boolean takesDeveloper() {
        return !mixtures.isEmpty();
    }
}
