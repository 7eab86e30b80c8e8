package rinsebell.app.api;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.report.Cost;
import rinsebell.floor.report.UseReport;
import rinsebell.floor.report.UseSum;
import rinsebell.floor.unit.Fraction;

/**
 * What was used on a day, as programs read it. Decimals are rounded; what nobody said or typed in is absent.
 *
 * @param day of the salon, as ISO 8601 has it
 * @param bowls how many were mixed of which it is known what is in them
 * @param told of how many of them somebody said what was left
 * @param unknown how many more were mixed
 * @param days the share thrown away on it and on those before
 */
record UseJson(
        String day,
        int bowls,
        int told,
        int unknown,
        SumJson total,
        List<ProductJson> products,
        List<VisitJson> visits,
        List<DayJson> days) {

    static UseJson of(UseReport report, List<UseReport> days) {
        return new UseJson(
                report.day().toString(),
                report.bowls().size(),
                report.told(),
                report.unknown(),
                SumJson.of(report.total()),
                report.byProduct().stream().map(ProductJson::of).toList(),
                report.byVisit().stream().map(VisitJson::of).toList(),
                days.stream().map(DayJson::of).toList());
    }

    record ProductJson(long product, SumJson sum) {
        static ProductJson of(UseReport.OfProduct one) {
            return new ProductJson(one.product().value(), SumJson.of(one.sum()));
        }
    }

    /** @param visit absent for bowls that were on nobody */
    record VisitJson(@Nullable Long visit, SumJson sum) {
        static VisitJson of(UseReport.OfVisit one) {
            return new VisitJson(one.whose().map(visit -> visit.id().value()).orElse(null), SumJson.of(one.sum()));
        }
    }

    record DayJson(
            String day, int bowls, int told, @Nullable BigDecimal share) {
        static DayJson of(UseReport report) {
            return new DayJson(
                    report.day().toString(),
                    report.bowls().size(),
                    report.told(),
                    report.total().share().map(UseJson::part).orElse(null));
        }
    }

    /**
     * @param told grams in bowls of which somebody said what was left
     * @param share which part of those was left, from 0 to 1
     */
    record SumJson(
            BigDecimal grams,
            BigDecimal told,
            @Nullable BigDecimal left,
            @Nullable BigDecimal share,
            CostJson cost,
            @Nullable CostJson lost) {
        static SumJson of(UseSum sum) {
            var share = sum.share();
            return new SumJson(
                    UseJson.grams(sum.mixed()),
                    UseJson.grams(sum.told()),
                    share.map(said -> UseJson.grams(sum.left())).orElse(null),
                    share.map(UseJson::part).orElse(null),
                    CostJson.of(sum.cost()),
                    share.map(said -> CostJson.of(sum.lost())).orElse(null));
        }
    }

    /**
     * @param known the sum of what is known
     * @param missing how many portions have no price; then it is more
     */
    record CostJson(BigDecimal known, int missing) {
        static CostJson of(Cost cost) {
            return new CostJson(UseJson.part(cost.known()), cost.missing());
        }
    }

    private static BigDecimal grams(Fraction grams) {
        return new BigDecimal(grams.plain(2));
    }

    private static BigDecimal part(Fraction part) {
        return new BigDecimal(part.plain(4));
    }
}
