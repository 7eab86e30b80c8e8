package rinsebell.web;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rinsebell.web.board.TrustTelling;
import rinsebell.web.view.TrustPage;

/** The page on which a device is told to trust the server, with an authority of its own and without. */
final class TrustSamples {
    private static final String WELCOME = "http://192.168.178.20:8460/trust";

    private TrustSamples() {}

    static TrustPage page() {
        var told = new TrustTelling.Told(
                "Rinsebell 0A1B2C",
                Collections.nCopies(16, "D4E5"),
                List.of("localhost", "rinsebell.local"),
                "/trust/authority.crt",
                "/trust/authority.mobileconfig");
        return telling()
                .page(
                        WELCOME,
                        List.of("https://rinsebell.local:8461", "https://[fdaa:bbbb:cccc:dddd:eeee:ffff:1:2]:8461"),
                        Optional.of(told));
    }

    static TrustPage atOnce() {
        return telling().page(WELCOME, List.of("https://colour.salon.test:8461"), Optional.empty());
    }

    private static TrustTelling telling() {
        return new TrustTelling(Words.british());
    }
}
