package rinsebell.app.access;

import java.util.function.Predicate;
import org.eclipse.jetty.server.Request;
import rinsebell.app.door.Cookies;
import rinsebell.app.door.Key;
import rinsebell.db.Keyring;

/** Tells requests of devices that are in, and of programs with a key, from all others, before any route does; it opens nothing. */
record Known(Keyring keyring) implements Predicate<Request> {
    @Override
    public boolean test(Request request) {
        return Cookies.of(request, Access.DEVICE)
                .flatMap(Key::read)
                .or(() -> ProgramKey.of(request))
                .flatMap(key -> keyring.device(key.hash()))
                .isPresent();
    }
}
