package rinsebell.demo.measure;

import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.demo.BusyDay;
import rinsebell.web.Assets;
import rinsebell.web.Screen;
import rinsebell.web.Words;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.measure.Pages}: the wall's page with 8 and with 200 busy chairs,
 * asked for over HTTP on four connections, beside the plain template on one thread.
 */
public final class Pages {
    private static final int CONNECTIONS = 4;
    private static final Duration WARM_UP = Duration.ofSeconds(6);
    private static final Duration MEASURED = Duration.ofSeconds(8);

    private Pages() {}

    public static void main(String... arguments) throws Exception {
        measure(8);
        measure(200);
    }

    private static void measure(int chairs) throws Exception {
        try (var served = Served.with(chairs)) {
            var template = new Template(served.day());
            template.rate(WARM_UP);
            pages(served, "", WARM_UP);
            var plain = template.rate(MEASURED);
            var told = template.toldRate(MEASURED);
            var pages = pages(served, "", MEASURED);
            var gzip = pages(served, "Accept-Encoding: gzip\r\n", MEASURED);
            System.out.printf(
                    Locale.ROOT,
                    "%d busy chairs: %d bytes, %d compressed; template alone %.0f/s, told and rendered %.0f/s; over HTTP "
                            + "%.0f/s (%.2f of the template), compressed %.0f/s%n",
                    chairs,
                    bytes(served, ""),
                    bytes(served, "Accept-Encoding: gzip\r\n"),
                    plain.perSecond(),
                    told.perSecond(),
                    pages.perSecond(),
                    pages.perSecond() / plain.perSecond(),
                    gzip.perSecond());
        }
    }

    private static long bytes(Served served, String headers) throws Exception {
        try (var one = new Connection(served.port())) {
            return one.get("/", headers).bytes();
        }
    }

    private static Rate pages(Served served, String headers, Duration atLeast) throws Exception {
        Callable<Rate> asking = () -> {
            try (var one = new Connection(served.port())) {
                return Rate.of(atLeast, () -> one.get("/", headers));
            }
        };
        return Rate.together(Stream.generate(() -> asking).limit(CONNECTIONS).toList());
    }

    /** The page's template without a server around it. */
    private static final class Template {
        private final rinsebell.web.Pages pages = new rinsebell.web.Pages();
        private final BusyDay day;
        private final Assets assets = Assets.under(AssetRoutes.PREFIX);

        Template(BusyDay day) {
            this.day = day;
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
            var view = new LivePages(moment, null, null).floor();
            return Rate.of(atLeast, () -> pages.render(view, screen));
        }

        /** The view is told anew for each, as a page must be. */
        Rate toldRate(Duration atLeast) throws Exception {
            var moment = moment();
            var screen = screen(moment);
            return Rate.of(atLeast, () -> pages.render(new LivePages(moment, null, null).floor(), screen));
        }
    }
}
