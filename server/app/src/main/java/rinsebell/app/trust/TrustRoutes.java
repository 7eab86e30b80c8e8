package rinsebell.app.trust;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.web.board.TrustTelling;
import rinsebell.web.view.TrustPage;
import rinsebell.web.view.View;

/**
 * Where a device that does not trust this server yet is told how to: {@code GET /trust}, and the authority below it. None of
 * it says anything of the salon.
 */
public final class TrustRoutes implements Routes {

    /** The address of the page. */
    public static final String PAGE = "/trust";

    private static final String CERTIFICATE = PAGE + "/authority.crt";
    private static final String PROFILE = PAGE + "/authority.mobileconfig";

    private final Supplier<WayIn> wayIn;
    private final Optional<Authority> authority;
    private final TrustTelling telling;
    private final Function<View, String> drawn;

    /**
     * Of a server that devices reach.
     *
     * @param wayIn how, now
     * @param authority that they are told to trust; empty where they need not be
     * @param drawn a page that belongs to no salon
     */
    public TrustRoutes(
            Supplier<WayIn> wayIn, Optional<Authority> authority, TrustTelling telling, Function<View, String> drawn) {
        this.wayIn = wayIn;
        this.authority = authority;
        this.telling = telling;
        this.drawn = drawn;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(PAGE, ctx -> ctx.html(drawn.apply(page(wayIn.get()))), Matter.OPEN);
        authority.ifPresent(known -> {
            routes.get(CERTIFICATE, ctx -> send(ctx, "application/x-x509-ca-cert", known.der()), Matter.OPEN);
            routes.get(PROFILE, ctx -> send(ctx, AppleProfile.TYPE, AppleProfile.of(known)), Matter.OPEN);
        });
    }

    private static void send(Context ctx, String type, byte[] file) {
        ctx.contentType(type).result(file);
    }

    private TrustPage page(WayIn ways) {
        return telling.page(ways.welcome(), ways.secure(), authority.map(TrustRoutes::told));
    }

    private static TrustTelling.Told told(Authority authority) {
        return new TrustTelling.Told(
                authority.name(), authority.fingerprint().groups(), authority.hosts(), CERTIFICATE, PROFILE);
    }
}
