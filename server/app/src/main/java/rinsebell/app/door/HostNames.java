package rinsebell.app.door;

import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The names under which this house may be called.
 *
 * <p>A page of another site can make its own name point at this machine (DNS rebinding) and would then read us as if we
 * were that site; but its browser still sends the other site's name in {@code Host}. So every request must name us.
 */
public final class HostNames {

    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    private final Supplier<Set<String>> names;

    private HostNames(Supplier<Set<String>> names) {
        this.names = names;
    }

    /**
     * The names of this machine for itself and those given.
     *
     * @param more names or addresses; one with {@code :port} holds for exactly that port, one without for the port that
     *     the request came in on
     */
    public static HostNames loopbackAnd(Set<String> more) {
        return loopbackAnd(() -> more);
    }

    /** The same where they change with the network; asked for again with each request. */
    public static HostNames loopbackAnd(Supplier<Set<String>> more) {
        return new HostNames(more);
    }

    /** The name alone. */
    public static String withoutPort(String name) {
        return hasPort(name) ? name.substring(0, name.lastIndexOf(':')) : name;
    }

    /** Whether no other machine finds what is called so, with or without a port. */
    public static boolean isLoopback(String host) {
        return LOOPBACK.contains(host.toLowerCase(Locale.ROOT).replaceFirst(":\\d+$", ""));
    }

    /**
     * Whether a {@code Host} header names this house.
     *
     * @param host the header as it came; none from an old client
     * @param port the port that the request came in on
     * @param usual the port that a browser leaves out
     */
    boolean allow(@Nullable String host, int port, int usual) {
        if (host == null) {
            return false;
        }
        String named = host.toLowerCase(Locale.ROOT);
        return Stream.concat(LOOPBACK.stream(), names.get().stream())
                .map(name -> name.toLowerCase(Locale.ROOT))
                .anyMatch(name -> named.equals(withPort(name, port)) || (port == usual && named.equals(name)));
    }

    private static String withPort(String name, int port) {
        return hasPort(name) ? name : name + ":" + port;
    }

    private static boolean hasPort(String name) {
        return name.indexOf(':', name.lastIndexOf(']') + 1) >= 0;
    }
}
