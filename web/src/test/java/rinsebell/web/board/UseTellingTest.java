package rinsebell.web.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rinsebell.floor.testing.Scoop.g;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Tub;
import rinsebell.floor.report.UseReport;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.Words;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Table;

/** What the page and the table file say; each figure was worked out by hand. */
class UseTellingTest {
    private final Story story = Story.stocked().at("10:00");
    private String label = "M. A.";

    private Moment moment() {
        var floor = story.floor();
        return new Moment(floor, id -> label, List.of(), Saturday.at("18:00"), Words.british());
    }

    private UseReport report() {
        return UseReport.of(Saturday.DATE, story.floor(), story.floor().salon());
    }

    private LeadPage page() {
        var shell = new LivePages(moment(), null, null).still("", Nav.DAY);
        return new UseTelling(moment(), report(), List.of(report())).page(shell);
    }

    private List<String> row(String part, int number) {
        Table table = page().parts().stream()
                .filter(one -> one.id().equals(part))
                .findFirst()
                .orElseThrow()
                .tables()
                .get(0);
        return table.rows().get(number).cells();
    }

    private void priced(Directions product, String grams, String price) {
        var tub = new Tub(Grams.of(grams), new BigDecimal(price));
        story.tells(rinsebell.floor.Stream.SALON, new SalonEvent.TubPriced(story.product(product), tub));
    }

    private BowlId mixed(VisitId visit) {
        var portions = story.portions(g(60, Shelf.POWDER), g(65, Shelf.DEV20));
        return new BowlId(story.tells(new DayEvent.Mixed(portions, BowlReason.FIRST, visit)));
    }

    private void thrownAway(BowlId bowl, String grams) {
        story.tells(new DayEvent.ThrownAway(bowl, new Left.Weighed(Grams.of(grams))));
    }

    /** 60 × 27 / 450 = 3.60; 25 of 125 g are a fifth: 12 g, and 0.72. The developer has no price. */
    @Test
    void whatHasNoPriceIsNotShownAsFree() {
        priced(Shelf.POWDER, "450", "27.00");
        thrownAway(mixed(story.arrivesFine().id()), "25");
        assertThat(row("products", 0)).containsExactly("developer 20", "65", "13", "20 %", "not known", "not known");
        assertThat(row("products", 1)).containsExactly("powder", "60", "12", "20 %", "3.60", "0.72");
        assertThat(row("products", 2)).containsExactly("All", "125", "25", "20 %", "at least 3.60", "at least 0.72");
        assertThat(row("visits", 0)).containsExactly("M. A.", "125", "at least 3.60");
    }

    @Test
    void whatNobodySaidIsNotShownAsNone() {
        mixed(story.arrivesFine().id());
        assertThat(row("products", 0)).startsWith("developer 20", "65", "–", "not said");
        assertThat(page().intro()).isEqualTo("Bowls mixed: 1. Somebody said what was left in 0 of them.");
        assertThat(page().parts().get(2).drawing()).isEmpty();
    }

    /** Of 125 g: 10 g are 8 %, below a line at 10; 12.5 g are at it, and 12.6 g, 10.08 %, above: 0.504 of 20. */
    @ParameterizedTest
    @CsvSource({"0, 10 %, 0.0150", "10, 10 %, 0.8", "12.5, 10 %, 1.0", "12.6, 20 %, 0.504", "125, 100 %, 1.0"})
    void theColumnIsAsHighAsItsShare(String left, String top, double tall) {
        thrownAway(mixed(story.arrivesFine().id()), left);
        var plot = page().parts().get(2).drawing().orElseThrow();
        assertThat(plot.levels().get(0).text()).isEqualTo(top);
        assertThat(plot.bars()).singleElement().satisfies(bar -> {
            assertThat(bar.tall()).isCloseTo(tall, within(1e-9));
            assertThat(bar.top() + bar.tall()).isCloseTo(1, within(1e-9));
        });
        assertThat(plot.telling()).startsWith("Share thrown away on each day from 16 May to 16 May");
    }

    /** OWASP, "CSV Injection": what begins like a formula gets an apostrophe before it. RFC 4180: quotes are doubled. */
    @ParameterizedTest
    @CsvSource({
        "=1+1, '''=1+1'",
        "+x, '''+x'",
        "-2, '''-2'",
        "@SUM(A1), '''@SUM(A1)'",
        "'=cmd|\"/c\",1', '\"''=cmd|\"\"/c\"\",1\"'"
    })
    void nothingThatWasTypedIsAFormula(String typed, String cell) {
        label = typed;
        var product = story.product(named(typed));
        var visit = story.arrivesFine().id();
        var portions = List.of(new rinsebell.floor.bowl.Portion(product, 1, Grams.of("30.5")));
        var bowl = story.tells(new DayEvent.Mixed(portions, BowlReason.FIRST, visit));
        thrownAway(new BowlId(bowl), "10");
        var lines = new UseSheet(report(), moment()).csv().split("\r\n");
        assertThat(lines[0]).isEqualTo("day,mixed at,bowl,product,grams,left share,cost,visit");
        // 10 / 30.5 = 0.32786...
        assertThat(lines[1]).isEqualTo("2026-05-16,2026-05-16 10:00," + bowl + "," + cell + ",30.5,0.3279,," + cell);
    }

    private static Directions named(String name) {
        var powder = Shelf.REMOVER;
        return new Directions(
                name,
                powder.kind(),
                powder.times(),
                powder.limits(),
                powder.mixing(),
                powder.checks(),
                powder.contents());
    }
}
