package rinsebell.app.trust;

import java.io.IOException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javax.jmdns.JmDNS;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The name that this machine gives itself on its network (mDNS, RFC 6762). Where the network lets it have none, devices take
 * its address, and nothing else is different.
 */
final class NetworkName implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(NetworkName.class);

    /** Tells one network who has that name. */
    @FunctionalInterface
    interface Announcer {
        /** @param name without its ending */
        Announced on(InetAddress address, String name) throws IOException;
    }

    /** Goes on telling until it is closed. */
    interface Announced extends AutoCloseable {
        /** The name as the network knows it, which is another where somebody else had it before. */
        String name();

        @Override
        void close();
    }

    private final String name;
    private final Announcer announcer;
    private final List<Announced> announced = new ArrayList<>();
    private List<InetAddress> addresses = List.of();
    private String lastSaid = "";

    NetworkName(String name, Announcer announcer) {
        this.name = name;
        this.announcer = announcer;
    }

    static NetworkName by(String name) {
        return new NetworkName(name, NetworkName::announce);
    }

    private static Announced announce(InetAddress address, String name) throws IOException {
        JmDNS network = JmDNS.create(address, name);
        return new Announced() {
            @Override
            public String name() {
                return network.getHostName();
            }

            /** Taking leave takes the library two seconds, for which no stop should wait. */
            @Override
            public void close() {
                var unused = CompletableFuture.runAsync(() -> takeLeave(network));
            }
        };
    }

    private static void takeLeave(JmDNS network) {
        try {
            network.close();
        } catch (IOException e) {
            LOG.debug("nobody is told that the name is free again", e);
        }
    }

    /** Tells every network on which this machine has such an address; nothing new for those that it had before. */
    void announceOn(List<InetAddress> all) {
        List<InetAddress> next =
                all.stream().filter(Inet4Address.class::isInstance).toList();
        if (!next.equals(addresses)) {
            close();
            addresses = announcedOn(next) ? next : List.of();
        }
        lookForAnother();
    }

    private boolean announcedOn(List<InetAddress> all) {
        for (InetAddress address : all) {
            try {
                announced.add(announcer.on(address, name.substring(0, name.indexOf('.'))));
            } catch (IOException e) {
                say("This network does not let the server call itself " + name + "; its address "
                        + address.getHostAddress() + " works all the same. (" + e.getMessage() + ")");
                return false;
            }
        }
        return true;
    }

    private void lookForAnother() {
        for (Announced one : announced) {
            String known = one.name().replaceFirst("\\.$", "");
            if (!known.equalsIgnoreCase(name)) {
                say("Another machine on this network calls itself " + name
                        + ". Stop it, or give this server another name "
                        + "with --name, such as --name colour-bar.local.");
            }
        }
    }

    private void say(String sentence) {
        if (!sentence.equals(lastSaid)) {
            LOG.warn("{}", sentence);
            lastSaid = sentence;
        }
    }

    @Override
    public void close() {
        announced.forEach(Announced::close);
        announced.clear();
    }
}
