package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.report.Cost;
import rinsebell.floor.report.UseReport;
import rinsebell.floor.report.UseSum;
import rinsebell.floor.unit.Fraction;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.LeadPage.Part;
import rinsebell.web.view.Press;
import rinsebell.web.view.Shell;
import rinsebell.web.view.Table;
import rinsebell.web.view.Table.Row;

/** Tells what was used on a day and what of it was thrown away. What nobody said or typed in is never shown as none. */
public final class UseTelling {
    private static final Fraction HUNDRED = Fraction.of(100);

    private final Moment moment;
    private final UseReport report;
    private final List<UseReport> days;

    /**
     * @param moment whose texts know the heads of that day
     * @param days several that end with the one that is told
     */
    public UseTelling(Moment moment, UseReport report, List<UseReport> days) {
        this.moment = moment;
        this.report = report;
        this.days = List.copyOf(days);
    }

    /** @param shell of the page, by its title */
    public LeadPage page(Shell shell) {
        var other = Press.opens(moment.say("lead.title"), "", "/lead?day=" + report.day());
        var days = DaysTelling.of(moment, report.day(), new LeadPage.At("/use", "/api/use.csv", other));
        return new LeadPage(shell, intro(), moment.say("use.caution"), days, parts());
    }

    private String intro() {
        if (report.isEmpty()) {
            return moment.say("use.nothing");
        }
        var said = moment.say("use.said", report.bowls().size(), report.told());
        return report.unknown() == 0 ? said : said + " " + moment.say("use.unknown", report.unknown());
    }

    private List<Part> parts() {
        var parts = new ArrayList<Part>();
        if (!report.bowls().isEmpty()) {
            parts.add(part("products", byProduct()));
            parts.add(part("visits", byVisit()));
        }
        parts.add(new WasteDrawing(moment, days).part());
        return parts;
    }

    private Part part(String key, Table table) {
        return new Part(key, moment.say("use." + key), List.of(table), null);
    }

    private Table byProduct() {
        var rows = Stream.concat(
                report.byProduct().stream().map(one -> row(name(one.product()), one.sum())),
                Stream.of(row(moment.say("use.all"), report.total())));
        var heads = heads("product", "mixed", "left", "share", "cost", "lost");
        return new Table(moment.say("use.products"), heads, rows.toList(), false);
    }

    private Row row(String name, UseSum sum) {
        var said = sum.share().isPresent();
        return new Row(
                name,
                grams(sum.mixed()),
                said ? grams(sum.left()) : "–",
                share(sum),
                cost(sum.cost()),
                said ? cost(sum.lost()) : "–");
    }

    private Table byVisit() {
        var rows = Stream.concat(
                report.byVisit().stream()
                        .map(one -> row(
                                one.whose().map(moment::label).orElse(moment.say("use.nobody")),
                                grams(one.sum().mixed()),
                                one.sum().cost())),
                Stream.of(row(
                        moment.say("use.all"),
                        grams(report.total().mixed()),
                        report.total().cost())));
        return new Table(moment.say("use.visits"), heads("visit", "mixed", "cost"), rows.toList(), false);
    }

    private Row row(String name, String grams, Cost cost) {
        return new Row(name, grams, cost(cost));
    }

    private List<String> heads(String... names) {
        return Stream.of(names).map(head -> moment.say("use.head." + head)).toList();
    }

    private String name(ProductId product) {
        return moment.floor()
                .salon()
                .product(product)
                .map(known -> known.directions().name())
                .orElse("");
    }

    /** Of those bowls of which somebody said what was left. */
    private String share(UseSum sum) {
        return sum.share().map(UseTelling::percent).orElse(moment.say("use.not_said"));
    }

    private String cost(Cost cost) {
        var known = cost.known().rounded(2).toPlainString();
        if (cost.missing() == 0) {
            return known;
        }
        return moment.say(cost.known().signum() == 0 ? "use.no_price" : "use.at_least", known);
    }

    static String grams(Fraction grams) {
        return grams.plain(1);
    }

    static String percent(Fraction share) {
        return share.times(HUNDRED).rounded(0) + " %";
    }

    static Optional<Fraction> share(UseReport day) {
        return day.total().share();
    }
}
