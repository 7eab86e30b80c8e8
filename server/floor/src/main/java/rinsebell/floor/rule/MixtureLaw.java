package rinsebell.floor.rule;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.product.Contents;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/**
 * What the law says of a mixture that is ready for use. Source: Regulation (EC) No 1223/2009, Annex III, entry 12(a)
 * (hydrogen peroxide at most 12 %) and entry 4 (ammonia at most 6 %, named on the label above 2 %).
 */
public final class MixtureLaw {
    /** Hydrogen peroxide, ready for use, at most; Annex III, 12(a). */
    public static final Percent MOST_PEROXIDE = Percent.of("12");

    /** Ammonia as NH3, ready for use, at most; Annex III, 4. */
    public static final Percent MOST_AMMONIA = Percent.of("6");

    /** Above this the label says "Contains ammonia"; Annex III, 4. */
    public static final Percent AMMONIA_NAMED_ABOVE = Percent.of("2");

    private MixtureLaw() {}

    /** What is in a portion, and its weight. */
    public record Part(Contents contents, Grams grams) {}

    static List<Reason> judge(List<Part> parts) {
        var found = new ArrayList<Reason>();
        // A strength that is not known counts as none here, so what is refused is surely over the limit.
        var peroxide = atLeast(parts, Contents::peroxide);
        if (isOver(peroxide, MOST_PEROXIDE, parts)) {
            found.add(Reason.of(ReasonCode.PEROXIDE_OVER_LAW, MOST_PEROXIDE));
        } else if (peroxide.signum() > 0) {
            found.add(Reason.of(ReasonCode.CONTAINS_PEROXIDE));
        }
        var ammonia = atLeast(parts, Contents::ammonia);
        if (isOver(ammonia, MOST_AMMONIA, parts)) {
            found.add(Reason.of(ReasonCode.AMMONIA_OVER_LAW, MOST_AMMONIA));
        } else if (isOver(ammonia, AMMONIA_NAMED_ABOVE, parts)) {
            found.add(Reason.of(ReasonCode.CONTAINS_AMMONIA, AMMONIA_NAMED_ABOVE));
        }
        return found;
    }

    /** Hydrogen peroxide of the whole, % w/w; empty while a strength is not known, or nothing is weighed. */
    public static Optional<Percent> peroxide(List<Part> parts) {
        return share(parts, Contents::peroxide);
    }

    /** Ammonia as NH3 of the whole, % w/w; empty while a strength is not known, or nothing is weighed. */
    public static Optional<Percent> ammonia(List<Part> parts) {
        return share(parts, Contents::ammonia);
    }

    private static Optional<Percent> share(List<Part> parts, Function<Contents, @Nullable Percent> of) {
        var total = total(parts);
        if (total.signum() == 0 || parts.stream().anyMatch(part -> of.apply(part.contents) == null)) {
            return Optional.empty();
        }
        return Optional.of(new Percent(atLeast(parts, of).divide(total, MathContext.DECIMAL64)));
    }

    /** Sum of percent times grams over the portions whose strength is known. */
    private static BigDecimal atLeast(List<Part> parts, Function<Contents, @Nullable Percent> of) {
        var sum = BigDecimal.ZERO;
        for (var part : parts) {
            var strength = of.apply(part.contents);
            if (strength != null) {
                sum = sum.add(strength.value().multiply(part.grams.amount()));
            }
        }
        return sum;
    }

    private static boolean isOver(BigDecimal percentGrams, Percent limit, List<Part> parts) {
        return percentGrams.compareTo(limit.value().multiply(total(parts))) > 0;
    }

    private static BigDecimal total(List<Part> parts) {
        return parts.stream().map(part -> part.grams.amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
