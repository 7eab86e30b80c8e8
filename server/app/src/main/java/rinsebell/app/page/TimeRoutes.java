package rinsebell.app.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.time.SalonClock;

/**
 * {@code GET /clock}: what time it is in the salon. A screen asks several times in a row and reckons with how long the
 * answers took, as clocks on a network do (RFC 5905, section 8), so its own clock may be as wrong as it likes.
 */
public final class TimeRoutes implements Routes {
    private final SalonClock clock;

    public TimeRoutes(SalonClock clock) {
        this.clock = clock;
    }

    /**
     * @param now milliseconds since 1970
     * @param speed salon seconds in a real one, 1 outside the demo
     */
    record Told(long now, int speed) {}

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/clock", this::tell, Matter.OPEN);
    }

    /** Received and sent are one instant: between them nothing is done. */
    private void tell(Context ctx) {
        ctx.header("Cache-Control", "no-store").json(new Told(clock.now().toEpochMilli(), clock.speed()));
    }
}
