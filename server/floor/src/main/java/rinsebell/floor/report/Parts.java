package rinsebell.floor.report;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.unit.Fraction;

/**
 * How large the parts of one mixing were. Nobody weighs a bowl when dividing it, so parts are taken as equal; but one of
 * which more was left by the scale held at least that, and the others share the rest. All parts together are always what
 * was mixed.
 */
final class Parts {
    private Parts() {}

    /** @param parts every bowl of one mixing */
    static Map<BowlId, Fraction> sizes(List<Bowl> parts) {
        var sizes = new LinkedHashMap<BowlId, Fraction>();
        var rest = Fraction.of(parts.get(0).mixed().amount());
        var fullestFirst = parts.stream()
                .sorted(Comparator.comparing(Parts::atLeast).reversed())
                .toList();
        for (var part : fullestFirst) {
            var equal = rest.dividedBy(Fraction.of(parts.size() - sizes.size()));
            var size = least(rest, most(equal, atLeast(part)));
            sizes.put(part.id(), size);
            rest = rest.minus(size);
        }
        return sizes;
    }

    private static Fraction atLeast(Bowl part) {
        return part.left() instanceof Left.Weighed weighed
                ? Fraction.of(weighed.grams().amount())
                : Fraction.ZERO;
    }

    private static Fraction most(Fraction one, Fraction other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    private static Fraction least(Fraction one, Fraction other) {
        return one.compareTo(other) <= 0 ? one : other;
    }
}
