package rinsebell.app.api;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.bowl.Portion;
import rinsebell.web.Codes;

/**
 * A recipe that was really mixed.
 *
 * @param dividedFrom the bowl that was mixed, when this one was divided from it
 * @param visit whom for; absent for nobody yet
 * @param portions empty while the recipe is not known
 * @param thrownAwayAt absent while it stands
 * @param left what was left by eye
 * @param leftGrams what was left by the scale
 */
record BowlJson(
        long id,
        @Nullable Long dividedFrom,
        String mixedAt,
        String reason,
        @Nullable Long visit,
        List<PortionJson> portions,
        boolean divided,
        boolean touched,
        @Nullable String thrownAwayAt,
        @Nullable String left,
        @Nullable BigDecimal leftGrams) {

    /** @param edition of the product's directions in force at mixing */
    record PortionJson(long product, int edition, String name, BigDecimal grams) {
        static PortionJson of(Portion portion, Floor floor) {
            var name = floor.salon()
                    .product(portion.product())
                    .map(product -> product.directions(portion.edition()).name())
                    .orElse("");
            return new PortionJson(
                    portion.product().value(),
                    portion.edition(),
                    name,
                    portion.grams().amount());
        }
    }

    static BowlJson of(Bowl bowl, Floor floor) {
        return new BowlJson(
                bowl.id().value(),
                bowl.root().equals(bowl.id()) ? null : bowl.root().value(),
                Json.instant(bowl.mixedAt()),
                Codes.of(bowl.reason()),
                Optional.ofNullable(bowl.forVisit()).map(visit -> visit.value()).orElse(null),
                bowl.portions().stream()
                        .map(portion -> PortionJson.of(portion, floor))
                        .toList(),
                bowl.divided(),
                floor.isTouched(bowl.id()),
                Json.instantOrNull(bowl.thrownAwayAt()),
                bowl.left() instanceof Left.Estimated eye ? Codes.of(eye.quarters()) : null,
                bowl.left() instanceof Left.Weighed scale ? scale.grams().amount() : null);
    }
}
