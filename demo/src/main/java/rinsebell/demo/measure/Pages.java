package rinsebell.demo.measure;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.shelf.InventedProducts;
import rinsebell.demo.BusyDay;
import rinsebell.floor.Floor;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.product.Directions;
import rinsebell.web.Assets;
import rinsebell.web.Screen;
import rinsebell.web.Words;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.form.Fields;
import rinsebell.web.form.FormPages;
import rinsebell.web.form.PageAsk;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.View;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.measure.Pages}: the wall's page with 8 and with 200 busy chairs, and
 * the mixing bench with a bowl reckoned and judged for one of 8 heads, asked for over HTTP on four connections, beside the
 * plain template on one thread.
 */
public final class Pages {
    private static final int CONNECTIONS = 4;

    /** A template of the same server that needs hardly anything of the floor. */
    private static final String PLAINEST = "/device";

    private static final Duration WARM_UP = Duration.ofSeconds(6);
    private static final Duration MEASURED = Duration.ofSeconds(8);

    private Pages() {}

    public static void main(String... arguments) throws Exception {
        for (var chairs : List.of(8, 200)) {
            try (var served = Served.with(chairs)) {
                measure(
                        "wall, " + chairs + " busy chairs",
                        served,
                        "/",
                        moment -> new LivePages(moment, null, null).floor());
            }
        }
        try (var served = Served.with(8)) {
            var typed = bowl(served.day().floor());
            measure("bench", served, "/mixtures?" + typed.query(), moment -> bench(moment, typed));
        }
    }

    /** Powder with clear and 30 volumes, for somebody on whom something is. */
    private static Fields bowl(Floor floor) {
        return Fields.of(
                "products.0.product", number(floor, InventedProducts.POWDER),
                "products.1.product", number(floor, InventedProducts.CLEAR),
                "products.1.per60", "7",
                "developer", number(floor, InventedProducts.DEVELOPER_30),
                "grams", "120",
                "visit", String.valueOf(floor.openVisits().get(0).id().value()));
    }

    private static String number(Floor floor, Directions directions) {
        return floor.salon().products().stream()
                .filter(product -> product.directions().equals(directions))
                .map(product -> String.valueOf(product.id().value()))
                .findFirst()
                .orElseThrow();
    }

    private static View bench(Moment moment, Fields typed) {
        var bells = new LivePages(moment, null, null).still("", Nav.BOWLS).bells();
        var ask = new PageAsk(
                moment, 0, typed, List.of(), Look.LIGHT, bells, null, "http://salon.test", ClientBook.EMPTY);
        return FormPages.all().find("mixtures", "").orElseThrow().page(ask);
    }

    private static void measure(String what, Served served, String address, Function<Moment, View> tells)
            throws Exception {
        var template = new Template(served.day(), tells);
        template.rate(WARM_UP);
        pages(served, address, "", WARM_UP);
        var plain = template.rate(MEASURED);
        var told = template.toldRate(MEASURED);
        var pages = pages(served, address, "", MEASURED);
        var plainest = pages(served, PLAINEST, "", MEASURED);
        var gzip = pages(served, address, "Accept-Encoding: gzip\r\n", MEASURED);
        System.out.printf(
                Locale.ROOT,
                "%s: %d bytes, %d compressed; template alone %.0f/s, told and rendered %.0f/s; over HTTP "
                        + "%.0f/s (%.2f of the template, %.2f of a page that tells nothing, %.0f/s), compressed %.0f/s%n",
                what,
                bytes(served, address, ""),
                bytes(served, address, "Accept-Encoding: gzip\r\n"),
                plain.perSecond(),
                told.perSecond(),
                pages.perSecond(),
                pages.perSecond() / plain.perSecond(),
                pages.perSecond() / plainest.perSecond(),
                plainest.perSecond(),
                gzip.perSecond());
    }

    private static long bytes(Served served, String address, String headers) throws Exception {
        try (var one = new Connection(served.port())) {
            return one.get(address, headers).bytes();
        }
    }

    private static Rate pages(Served served, String address, String headers, Duration atLeast) throws Exception {
        Callable<Rate> asking = () -> {
            try (var one = new Connection(served.port())) {
                return Rate.of(atLeast, () -> one.get(address, headers));
            }
        };
        return Rate.together(Stream.generate(() -> asking).limit(CONNECTIONS).toList());
    }

    /** The page's template without a server around it. */
    private static final class Template {
        private final rinsebell.web.Pages pages = new rinsebell.web.Pages();
        private final BusyDay day;
        private final Function<Moment, View> tells;
        private final Assets assets = Assets.under(AssetRoutes.PREFIX);

        Template(BusyDay day, Function<Moment, View> tells) {
            this.day = day;
            this.tells = tells;
        }

        private Moment moment() {
            return new Moment(day.floor(), id -> "", day.floor().bells(), Served.now(), Words.british());
        }

        private Screen screen(Moment moment) {
            return new Screen(moment.words(), assets, moment.time(), moment.now(), "measured-1", null);
        }

        /** Nothing but the template: its view was made before. */
        Rate rate(Duration atLeast) throws Exception {
            var moment = moment();
            var screen = screen(moment);
            var view = tells.apply(moment);
            return Rate.of(atLeast, () -> pages.render(view, screen));
        }

        /** The view is told anew for each, as a page must be. */
        Rate toldRate(Duration atLeast) throws Exception {
            var moment = moment();
            var screen = screen(moment);
            return Rate.of(atLeast, () -> pages.render(tells.apply(moment), screen));
        }
    }
}
