package rinsebell.floor.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Scoop.g;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.bowl.Left.Quarters;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Tub;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.testing.Where;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.VisitId;

/** Every sum was worked out by hand; its arithmetic stands beside it. */
class UseReportTest {
    private final Story story = Story.stocked().at("10:00");

    private UseReport report() {
        return UseReport.of(Saturday.DATE, story.floor(), story.floor().salon());
    }

    private void priced(Directions product, String grams, String price) {
        var tub = new Tub(Grams.of(grams), new BigDecimal(price));
        story.tells(Stream.SALON, new SalonEvent.TubPriced(story.product(product), tub));
    }

    private void thrownAway(BowlId bowl, @Nullable Left left) {
        story.tells(new DayEvent.ThrownAway(bowl, left));
    }

    private static Left estimated(Quarters quarters) {
        return new Left.Estimated(quarters);
    }

    private static Left weighed(String grams) {
        return new Left.Weighed(Grams.of(grams));
    }

    private static String exact(Fraction number) {
        return number.toString();
    }

    private BowlId mixedFor(VisitId visit, Scoop... scoops) {
        return new BowlId(story.tells(new DayEvent.Mixed(story.portions(scoops), BowlReason.FIRST, visit)));
    }

    /**
     * 60 g at 27.00 for 450 g are 60 × 27 / 450 = 3.60; 60 g at 9.00 for 1000 g are 0.54; together 4.14 = 207/50. Half of
     * 120 g is 60 g, and half of 4.14 is 2.07 = 207/100.
     */
    @Test
    void halfABowlIsHalfItsGramsAndHalfItsCost() {
        priced(Shelf.POWDER, "450", "27.00");
        priced(Shelf.DEV20, "1000", "9.00");
        thrownAway(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), estimated(Quarters.HALF));
        var sum = report().total();
        assertThat(exact(sum.mixed())).isEqualTo("120");
        assertThat(exact(sum.left())).isEqualTo("60");
        assertThat(sum.share().map(UseReportTest::exact)).contains("1/2");
        assertThat(sum.cost()).isEqualTo(new Cost(Fraction.of(new BigDecimal("4.14")), 0));
        assertThat(sum.lost()).isEqualTo(new Cost(Fraction.of(new BigDecimal("2.07")), 0));
    }

    /** Of 120 g: none, 30, 60, 90 and 120 g. */
    @ParameterizedTest
    @CsvSource({"NOTHING, 0", "QUARTER, 30", "HALF, 60", "THREE_QUARTERS, 90", "ALL, 120"})
    void whatIsEstimatedIsInQuarters(Quarters quarters, String left) {
        thrownAway(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), estimated(quarters));
        assertThat(exact(report().total().left())).isEqualTo(left);
    }

    /** No more can be left than the 120 g that were mixed. 119.99 = 11999/100. */
    @ParameterizedTest
    @CsvSource({"119.99, 11999/100", "120, 120", "120.01, 120"})
    void noMoreIsLeftThanWasMixed(String weighed, String left) {
        thrownAway(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), weighed(weighed));
        assertThat(exact(report().total().left())).isEqualTo(left);
    }

    /** 10 g at 10.00 for 300 g are 1/3; 30 g at 7.00 for 900 g are 7/30; together 17/30. A quarter of it: 17/120. */
    @Test
    void thirdsStayExact() {
        priced(Shelf.POWDER, "300", "10.00");
        priced(Shelf.DEV20, "900", "7.00");
        thrownAway(story.mixes(g(10, Shelf.POWDER), g(30, Shelf.DEV20)), estimated(Quarters.QUARTER));
        assertThat(exact(report().total().cost().known())).isEqualTo("17/30");
        assertThat(exact(report().total().lost().known())).isEqualTo("17/120");
    }

    /** A portion without a price is missing from the sum, and is not free: 3.60 are known, and one price is not. */
    @Test
    void whatHasNoPriceIsCountedAndNotTakenAsFree() {
        priced(Shelf.POWDER, "450", "27.00");
        thrownAway(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), estimated(Quarters.ALL));
        assertThat(report().total().cost()).isEqualTo(new Cost(Fraction.of(new BigDecimal("3.6")), 1));
        assertThat(report().total().lost()).isEqualTo(new Cost(Fraction.of(new BigDecimal("3.6")), 1));
        assertThat(report().bowls().get(0).portions().get(1).cost()).isEmpty();
    }

    /** The old price is 1.00 for 100 g and the new one, from 10:00 on Sunday, 2.00: 50 g cost 1/2 or 1. */
    @ParameterizedTest
    @CsvSource({"09:59:59, 1/2", "10:00, 1", "10:01, 1"})
    void thePriceInForceAtMixingCounts(String mixed, String cost) {
        var sunday = Saturday.DATE.plusDays(1);
        priced(Shelf.REMOVER, "100", "1.00");
        story.at(Saturday.on(sunday, "10:00"));
        priced(Shelf.REMOVER, "100", "2.00");
        story.at(Saturday.on(sunday, mixed)).mixes(g(50, Shelf.REMOVER));
        var report = UseReport.of(sunday, story.floor(), story.floor().salon());
        assertThat(exact(report.total().cost().known())).isEqualTo(cost);
    }

    /** Typed on Sunday at noon, and put right at one: 50 g from noon on cost 50 × 2 / 100 = 1; before it, at 1.00, 1/2. */
    @ParameterizedTest
    @CsvSource({"11:59:59, 1/2", "12:00, 1", "12:30, 1", "14:00, 1"})
    void whatIsTypedAgainOnTheSameDayPutsRightWhatWasTypedBefore(String mixed, String cost) {
        var sunday = Saturday.DATE.plusDays(1);
        priced(Shelf.REMOVER, "100", "1.00");
        story.at(Saturday.on(sunday, "12:00"));
        priced(Shelf.REMOVER, "100", "200.00");
        story.at(Saturday.on(sunday, "13:00"));
        priced(Shelf.REMOVER, "100", "2.00");
        story.at(Saturday.on(sunday, mixed)).mixes(g(50, Shelf.REMOVER));
        var report = UseReport.of(sunday, story.floor(), story.floor().salon());
        assertThat(exact(report.total().cost().known())).isEqualTo(cost);
    }

    /** An earlier day, told from the floor of that day, has the prices that were typed in since. */
    @Test
    void beforeTheFirstPriceThatOneCounts() {
        story.mixes(g(50, Shelf.REMOVER));
        var then = story.floor();
        story.at(Saturday.on(Saturday.DATE.plusDays(3), "10:00"));
        priced(Shelf.REMOVER, "100", "3.00");
        var told = UseReport.of(Saturday.DATE, then, story.floor().salon());
        assertThat(exact(told.total().cost().known())).isEqualTo("3/2");
        assertThat(UseReport.of(Saturday.DATE, then, then.salon())
                        .total()
                        .cost()
                        .missing())
                .isEqualTo(1);
    }

    /** 40 g in three bowls are 40/3 g each; a quarter of one is 10/3 g. All three together are still 40 g. */
    @Test
    void partsOfADividedBowlAreEqualAndCountedOnce() {
        var bowl = story.mixes(g(10, Shelf.POWDER), g(30, Shelf.DEV20));
        var second = story.divides(bowl);
        story.divides(second);
        thrownAway(second, estimated(Quarters.QUARTER));
        var report = report();
        assertThat(report.bowls()).extracting(use -> exact(use.size())).containsOnly("40/3");
        assertThat(report.bowls()).hasSize(3);
        assertThat(report.told()).isEqualTo(1);
        assertThat(exact(report.total().mixed())).isEqualTo("40");
        assertThat(exact(report.total().told())).isEqualTo("40/3");
        assertThat(exact(report.total().left())).isEqualTo("10/3");
        assertThat(report.total().share().map(UseReportTest::exact)).contains("1/4");
    }

    /**
     * 60 g in two bowls are 30 g each, unless more than that was left in one by the scale: it held at least so much, and
     * the other one the rest. 29.99 = 2999/100; 60 − 30.01 = 29.99.
     */
    @ParameterizedTest
    @CsvSource({
        "29.99, 30, 30, 2999/100",
        "30, 30, 30, 30",
        "30.01, 3001/100, 2999/100, 3001/100",
        "59, 59, 1, 59",
        "60, 60, 0, 60",
        "61, 60, 0, 60"
    })
    void aPartHeldAtLeastWhatWasLeftInIt(String weighed, String part, String other, String left) {
        var bowl = story.mixes(g(60, Shelf.REMOVER));
        story.divides(bowl);
        thrownAway(bowl, weighed(weighed));
        var report = report();
        assertThat(report.bowls()).extracting(use -> exact(use.size())).containsExactly(part, other);
        assertThat(exact(report.total().left())).isEqualTo(left);
        assertThat(exact(report.total().mixed())).isEqualTo("60");
    }

    /** 60 and 30 g; nothing was said of the second, so 15 of 60 g were thrown away: a quarter. */
    @Test
    void theShareIsOfThoseBowlsOfWhichItWasSaid() {
        thrownAway(story.mixes(g(60, Shelf.REMOVER)), weighed("15"));
        thrownAway(story.mixes(g(30, Shelf.REMOVER)), null);
        story.mixes(g(30, Shelf.REMOVER));
        assertThat(report().total().share().map(UseReportTest::exact)).contains("1/4");
        assertThat(report().told()).isEqualTo(1);
        assertThat(report().bowls()).hasSize(3);
        assertThat(exact(report().total().mixed())).isEqualTo("120");
    }

    @Test
    void whereNobodySaidAnythingThereIsNoShare() {
        thrownAway(story.mixes(g(60, Shelf.REMOVER)), null);
        assertThat(report().total().share()).isEmpty();
    }

    /** What is told afterwards counts; of a bowl that was not thrown away after all it does not. */
    @Test
    void itCanBeToldAfterwards() {
        var bowl = story.mixes(g(60, Shelf.REMOVER));
        story.tells(new DayEvent.LeftTold(bowl, weighed("6")));
        assertThat(report().total().share()).isEmpty();
        story.at("10:30");
        var thrown = story.tells(new DayEvent.ThrownAway(bowl));
        assertThat(report().total().share().map(UseReportTest::exact)).contains("1/10");
        story.at("10:40").tells(new DayEvent.LeftTold(bowl, estimated(Quarters.HALF)));
        assertThat(report().total().share().map(UseReportTest::exact)).contains("1/2");
        story.withdraws(thrown);
        assertThat(report().total().share()).isEmpty();
    }

    @Test
    void aBowlOfWhichNobodyKnowsWhatIsInItIsOnlyCounted() {
        var bowl = story.mixes();
        thrownAway(bowl, estimated(Quarters.HALF));
        assertThat(report().unknown()).isEqualTo(1);
        assertThat(report().bowls()).isEmpty();
        assertThat(report().isEmpty()).isFalse();
        story.fills(bowl, g(60, Shelf.REMOVER));
        assertThat(report().unknown()).isZero();
        assertThat(exact(report().total().left())).isEqualTo("30");
    }

    /** A salon day turns at four, so 03:59 is of the evening before. */
    @ParameterizedTest
    @CsvSource({"03:59, 0", "04:00, 1", "04:01, 1"})
    void onlyBowlsThatWereMixedOnThatDay(String mixed, int bowls) {
        story.at(mixed).mixes(g(60, Shelf.REMOVER));
        assertThat(report().bowls()).hasSize(bowls);
    }

    /** 60 g for the first; 30 g for nobody went on the second first, and then on the first; 20 g went on nobody. */
    @Test
    void byVisit() {
        var first = story.arrivesFine();
        var second = story.arrivesFine();
        mixedFor(first.id(), g(60, Shelf.REMOVER));
        var forNobody = story.mixes(g(30, Shelf.REMOVER));
        story.mixes(g(20, Shelf.REMOVER));
        story.at("10:10");
        first.puts(forNobody, Where.onScalp(Area.LENGTHS));
        story.at("10:05");
        second.puts(forNobody, Where.onScalp(Area.LENGTHS));
        var visits = report().byVisit();
        assertThat(visits)
                .extracting(one -> one.whose().map(visit -> visit.id()).orElse(null))
                .containsExactly(first.id(), second.id(), null);
        assertThat(visits).extracting(one -> exact(one.sum().mixed())).containsExactly("60", "30", "20");
    }

    /** What was used most comes first; the sums stand beside each product. */
    @Test
    void byProduct() {
        // 60 powder + 60 developer, a quarter left: 15 and 15 g.
        thrownAway(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), estimated(Quarters.QUARTER));
        // 10 powder + 20 developer, nobody said.
        story.mixes(g(10, Shelf.POWDER), g(20, Shelf.DEV20));
        // 30 toner + 20 developer, half left: 15 and 10 g.
        thrownAway(story.mixes(g(30, Shelf.TONER), g(20, Shelf.DEV20)), estimated(Quarters.HALF));
        assertThat(report().byProduct())
                .extracting(
                        one -> one.product(),
                        one -> exact(one.sum().mixed()),
                        one -> exact(one.sum().told()),
                        one -> exact(one.sum().left()))
                .isEqualTo(List.of(
                        // 60 + 20 + 20 mixed; 60 + 20 told; 15 + 10 left.
                        org.assertj.core.groups.Tuple.tuple(story.product(Shelf.DEV20), "100", "80", "25"),
                        org.assertj.core.groups.Tuple.tuple(story.product(Shelf.POWDER), "70", "60", "15"),
                        org.assertj.core.groups.Tuple.tuple(story.product(Shelf.TONER), "30", "30", "15")));
    }

    @Test
    void aDayWithoutABowlIsEmpty() {
        assertThat(report().isEmpty()).isTrue();
        assertThat(report().total().share()).isEmpty();
        assertThat(report().byVisit()).isEmpty();
    }
}
