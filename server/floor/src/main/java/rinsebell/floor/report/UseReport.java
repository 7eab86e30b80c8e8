package rinsebell.floor.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/**
 * What was used on a day, and what of it was thrown away.
 *
 * @param day the salon's own date
 * @param bowls every bowl that was mixed on it, parts of one that was divided as bowls of their own, in the order of
 *     mixing; but for those of which nobody knows what is in them
 * @param unknown how many those are
 */
public record UseReport(LocalDate day, List<BowlUse> bowls, int unknown) {
    public UseReport {
        bowls = List.copyOf(bowls);
    }

    /** @param sum of all that was mixed for them; of bowls for nobody where no visit is named */
    public record OfVisit(@Nullable Visit visit, UseSum sum) {
        public Optional<Visit> whose() {
            return Optional.ofNullable(visit);
        }
    }

    public record OfProduct(ProductId product, UseSum sum) {}

    /**
     * @param floor with the bowls of that day, and everybody who was here on it
     * @param shelf the salon as it is now, with every price that was ever typed in
     */
    public static UseReport of(LocalDate day, Floor floor, Salon shelf) {
        var mixed = floor.day().bowls().stream()
                .filter(bowl -> floor.salon().dayOf(bowl.mixedAt()).equals(day))
                .collect(Collectors.groupingBy(Bowl::root));
        var bowls = mixed.values().stream()
                .filter(parts -> parts.get(0).isRecipeKnown())
                .flatMap(parts -> parts(parts, floor, shelf))
                .sorted(Comparator.comparing((BowlUse use) -> use.bowl().mixedAt())
                        .thenComparingLong(use -> use.bowl().id().value()))
                .toList();
        var all = mixed.values().stream().mapToInt(List::size).sum();
        return new UseReport(day, bowls, all - bowls.size());
    }

    private static Stream<BowlUse> parts(List<Bowl> parts, Floor floor, Salon shelf) {
        var sizes = Parts.sizes(parts);
        return parts.stream().map(part -> {
            var size = sizes.getOrDefault(part.id(), Fraction.ZERO);
            return new BowlUse(part, size, whose(part, floor).orElse(null), portions(part, size, shelf));
        });
    }

    /** Whom it was mixed for; for nobody, who first got some of it. */
    private static Optional<Visit> whose(Bowl bowl, Floor floor) {
        var whom = bowl.forVisit();
        return whom == null
                ? floor.visits().stream()
                        .flatMap(visit -> visit.applications().stream().map(one -> new Put(visit, one)))
                        .filter(put -> put.of(bowl.id()))
                        .min(Comparator.comparing(put -> put.application.firstOn()))
                        .map(Put::visit)
                : floor.visit(whom);
    }

    private record Put(Visit visit, Application application) {
        boolean of(BowlId bowl) {
            return application.bowl().equals(bowl);
        }
    }

    private static List<BowlUse.Portion> portions(Bowl bowl, Fraction size, Salon shelf) {
        var share = bowl.mixed().amount().signum() == 0
                ? Fraction.ZERO
                : size.dividedBy(Fraction.of(bowl.mixed().amount()));
        return bowl.portions().stream()
                .map(portion -> portion(portion, share, shelf.product(portion.product()), bowl))
                .toList();
    }

    private static BowlUse.Portion portion(Portion portion, Fraction share, Optional<Product> product, Bowl bowl) {
        var grams = Fraction.of(portion.grams().amount()).times(share);
        var cost = product.flatMap(known -> known.tubAt(bowl.mixedAt())).map(tub -> tub.costOf(grams));
        return new BowlUse.Portion(portion.product(), portion.edition(), grams, cost);
    }

    /** Whether nothing was mixed on that day. */
    public boolean isEmpty() {
        return bowls.isEmpty() && unknown == 0;
    }

    public UseSum total() {
        return UseSum.of(bowls.stream().map(BowlUse::sum));
    }

    /** Of how many bowls somebody said what was left. */
    public int told() {
        return Math.toIntExact(
                bowls.stream().filter(use -> use.share().isPresent()).count());
    }

    /** What was used most first. */
    public List<OfProduct> byProduct() {
        return bowls.stream()
                .flatMap(BowlUse::products)
                .distinct()
                .map(product -> new OfProduct(product, UseSum.of(bowls.stream().map(use -> use.sumOf(product)))))
                .sorted(Comparator.comparing((OfProduct one) -> one.sum().mixed())
                        .reversed()
                        .thenComparingLong(one -> one.product().value()))
                .toList();
    }

    /** In the order in which their first bowls were mixed; what was for nobody last. */
    public List<OfVisit> byVisit() {
        var visits = bowls.stream().map(BowlUse::whose).distinct().toList();
        return Stream.concat(
                        visits.stream().filter(Optional::isPresent),
                        visits.stream().filter(Optional::isEmpty))
                .map(whose -> new OfVisit(
                        whose.orElse(null),
                        UseSum.of(bowls.stream()
                                .filter(use -> use.whose().equals(whose))
                                .map(BowlUse::sum))))
                .toList();
    }
}
