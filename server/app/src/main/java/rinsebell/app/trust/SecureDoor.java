package rinsebell.app.trust;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.door.CertificateUnfit;
import rinsebell.app.door.HostNames;
import rinsebell.app.door.Shown;
import rinsebell.app.thread.Threads;
import rinsebell.app.time.TimeSources;

/**
 * The way in over TLS. Once a minute it looks whether what it shows is still good and its addresses are the same, so that
 * neither a season nor a new address of the machine stops anybody.
 */
public final class SecureDoor implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(SecureDoor.class);
    private static final Duration ROUND = Duration.ofMinutes(1);
    private static final int USUAL_PORT = 443;

    private final Credentials credentials;
    private final Whereabouts whereabouts;
    private final @Nullable NetworkName name;
    private final TimeSources time;
    private final Shown shown;
    private final ScheduledExecutorService thread = Threads.timer("certificate");
    private String lastSaid = "";

    SecureDoor(Credentials credentials, Whereabouts whereabouts, @Nullable NetworkName name, TimeSources time)
            throws CertificateUnfit {
        this.credentials = credentials;
        this.whereabouts = whereabouts;
        this.name = name;
        this.time = time;
        this.shown = new Shown(credentials
                .newer(now(time))
                .orElseThrow(() -> new IllegalStateException("the first time there is one")));
    }

    /**
     * With an authority of the salon's own.
     *
     * @param folder that keeps it, and nothing else
     * @throws CertificateUnfit with what is wrong with what the folder keeps
     */
    public static SecureDoor byOwnAuthority(Path folder, Whereabouts whereabouts, TimeSources time)
            throws CertificateUnfit {
        return new SecureDoor(Vouched.in(folder, whereabouts, now(time)), whereabouts, named(whereabouts), time);
    }

    /**
     * With a certificate that the salon has from elsewhere.
     *
     * @throws CertificateUnfit with what is wrong with its files
     */
    public static SecureDoor byFiles(Path certificate, Path key, Whereabouts whereabouts, TimeSources time)
            throws CertificateUnfit {
        return new SecureDoor(new SalonFiles(certificate, key), whereabouts, named(whereabouts), time);
    }

    private static @Nullable NetworkName named(Whereabouts whereabouts) {
        return whereabouts.ownName().map(NetworkName::by).orElse(null);
    }

    private static Instant now(TimeSources time) {
        return Instant.ofEpochMilli(time.wallMillis());
    }

    /** What is shown; it changes while the server runs. */
    public Shown shown() {
        return shown;
    }

    /** What browsers may call this server by, as the door asks with every request. */
    public Set<String> callable() {
        return whereabouts.callable();
    }

    /** Begins to look after itself. */
    public void begin() {
        var unused = thread.scheduleWithFixedDelay(this::round, 0, ROUND.toMillis(), TimeUnit.MILLISECONDS);
    }

    void round() {
        try {
            whereabouts.look();
            credentials.newer(now(time)).ifPresent(shown::change);
            if (name != null) {
                name.announceOn(whereabouts.addresses());
            }
        } catch (CertificateUnfit | RuntimeException e) {
            say(String.valueOf(e.getMessage()));
        }
    }

    private void say(String trouble) {
        if (!trouble.equals(lastSaid)) {
            LOG.warn("{} What was shown before is shown until that is mended.", trouble);
            lastSaid = trouble;
        }
    }

    /** The authority that devices have to be told to trust; empty where they trust it already. */
    public Optional<Authority> authority() {
        return credentials.authority();
    }

    /** How other devices come in, by the ports that are open. */
    public WayIn wayIn(int plain, int secure) {
        Set<String> outside = outside();
        List<String> believed = whereabouts.inLinks().stream()
                .filter(host -> !outside.contains(HostNames.withoutPort(host)))
                .toList();
        return new WayIn(
                (believed.isEmpty() ? List.of("localhost") : believed)
                        .stream().map(host -> secure(host, secure)).toList(),
                "http://" + whereabouts.surest() + ":" + plain + TrustRoutes.PAGE,
                authority().map(Authority::fingerprint));
    }

    private static String secure(String host, int port) {
        boolean isWhole = port == USUAL_PORT || !HostNames.withoutPort(host).equals(host);
        return "https://" + host + (isWhole ? "" : ":" + port);
    }

    /** Under these nobody would believe this server. */
    private Set<String> outside() {
        return authority().stream()
                .flatMap(known -> known.outside(whereabouts.now()).stream())
                .map(Reach::told)
                .collect(Collectors.toSet());
    }

    @Override
    public void close() {
        thread.shutdownNow();
        if (name != null) {
            name.close();
        }
    }
}
