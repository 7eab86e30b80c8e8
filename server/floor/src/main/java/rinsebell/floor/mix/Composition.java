package rinsebell.floor.mix;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Contents;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/** What a mixture really holds, ready for use, in percent of its weight (w/w). */
public record Composition(List<Part> parts) {
    public Composition {
        parts = List.copyOf(parts);
    }

    /** What is in a portion, and its weight. */
    public record Part(Contents contents, Grams grams) {
        private Fraction weight() {
            return Fraction.of(grams.amount());
        }
    }

    public Fraction total() {
        return parts.stream().map(Part::weight).reduce(Fraction.ZERO, Fraction::plus);
    }

    /** Hydrogen peroxide; empty while a strength is not known, or nothing is weighed. */
    public Optional<Fraction> peroxide() {
        return share(Contents::peroxide);
    }

    /** Ammonia as NH3; empty while a strength is not known, or nothing is weighed. */
    public Optional<Fraction> ammonia() {
        return share(Contents::ammonia);
    }

    /** Hydrogen peroxide, where what is not known counts as none. */
    public Fraction peroxideAtLeast() {
        return atLeast(Contents::peroxide);
    }

    /** Ammonia as NH3, where what is not known counts as none. */
    public Fraction ammoniaAtLeast() {
        return atLeast(Contents::ammonia);
    }

    private Optional<Fraction> share(Function<Contents, @Nullable Percent> of) {
        var isKnown = parts.stream().allMatch(part -> of.apply(part.contents) != null);
        return isKnown && total().signum() > 0 ? Optional.of(atLeast(of)) : Optional.empty();
    }

    private Fraction atLeast(Function<Contents, @Nullable Percent> of) {
        var total = total();
        var sum = parts.stream()
                .flatMap(part -> Stream.ofNullable(of.apply(part.contents))
                        .map(strength -> Fraction.of(strength.value()).times(part.weight())))
                .reduce(Fraction.ZERO, Fraction::plus);
        return total.signum() == 0 ? Fraction.ZERO : sum.dividedBy(total);
    }
}
