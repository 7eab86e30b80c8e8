package rinsebell.app.page;

import io.javalin.config.RoutesConfig;
import java.util.concurrent.atomic.AtomicLong;
import rinsebell.app.door.Routes;

/**
 * How often something was erased. Every answer and every beat tells it: browsers keep screens, and one that was kept when the
 * number was another may show what is erased.
 */
public final class Erasings implements Routes {
    private static final String HEADER = "Rinsebell-Erased";

    private final AtomicLong number;

    /** @param before how often until now */
    public Erasings(long before) {
        this.number = new AtomicLong(before);
    }

    /** Something is erased, and shown nowhere any more. */
    public void more() {
        number.incrementAndGet();
    }

    public long number() {
        return number.get();
    }

    /** It is read before a page is drawn, so that no page of before has the number of after. */
    @Override
    public void addTo(RoutesConfig routes) {
        routes.before(ctx -> ctx.header(HEADER, String.valueOf(number())));
    }
}
