package rinsebell.app.door;

import io.javalin.config.RoutesConfig;

/** A group of addresses that belong together. */
@FunctionalInterface
public interface Routes {

    /** Adds each address with what answers it. */
    void addTo(RoutesConfig routes);
}
