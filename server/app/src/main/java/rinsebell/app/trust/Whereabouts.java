package rinsebell.app.trust;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.door.HostNames;

/** Knows under what other devices reach this server, now and whenever its network gave it another address. */
public final class Whereabouts {

    private static final Logger LOG = LoggerFactory.getLogger(Whereabouts.class);
    private static final String USUAL = "rinsebell.local";

    /** A name that a machine may give itself on its own network (RFC 6762, section 3). */
    private static final String OF_THE_NETWORK = "[a-z0-9-]+\\.local";

    private final Set<String> given;
    private final InetAddress bound;
    private volatile List<InetAddress> addresses;

    /**
     * Of a server that listens.
     *
     * @param given names or addresses that a person gave, with or without a port
     * @param bound what it listens on
     */
    public Whereabouts(Set<String> given, InetAddress bound) {
        this.given = given.stream()
                .map(name -> name.toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        this.bound = bound;
        this.addresses = found();
    }

    /** How an address is written in a link. */
    public static String inLink(InetAddress address) {
        return Numbers.inLink(address);
    }

    /** Finds out its addresses anew. */
    void look() {
        addresses = found();
    }

    /** The name that it gives itself on its network; empty for one that no other machine reaches. */
    public Optional<String> ownName() {
        Stream<String> usual = bound.isLoopbackAddress() ? Stream.empty() : Stream.of(USUAL);
        return Stream.concat(bare().filter(name -> name.matches(OF_THE_NETWORK)), usual)
                .findFirst();
    }

    private Stream<String> bare() {
        return given.stream().map(HostNames::withoutPort);
    }

    /** What an authority has to vouch for, besides private addresses. */
    Reach given() {
        TreeSet<String> hosts = new TreeSet<>(Set.of("localhost"));
        ownName().ifPresent(hosts::add);
        bare().filter(name -> Numbers.read(name).isEmpty()).forEach(hosts::add);
        return new Reach(
                hosts, bare().map(Numbers::read).flatMap(Optional::stream).collect(Collectors.toSet()));
    }

    /** Everything under which it can be reached, as it was when it was last found out. */
    Reach now() {
        Reach asGiven = given();
        Set<InetAddress> all = new LinkedHashSet<>(asGiven.addresses());
        all.addAll(addresses);
        return new Reach(asGiven.hosts(), all);
    }

    /** Those of this machine that other machines reach it by. */
    List<InetAddress> addresses() {
        return addresses;
    }

    private List<InetAddress> found() {
        Stream<InetAddress> all = bound.isAnyLocalAddress() ? ofThisMachine() : Stream.of(bound);
        return all.filter(address -> !address.isLoopbackAddress() && !needsASocket(address))
                .sorted(Numbers.IN_ORDER)
                .toList();
    }

    /** An address of one link alone, which no browser opens. */
    private static boolean needsASocket(InetAddress address) {
        return address.isLinkLocalAddress() && address instanceof Inet6Address;
    }

    private static Stream<InetAddress> ofThisMachine() {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(Whereabouts::isUp)
                    .flatMap(NetworkInterface::inetAddresses);
        } catch (SocketException e) {
            LOG.warn("the addresses of this machine can't be found out: {}", e.getMessage());
            return Stream.empty();
        }
    }

    private static boolean isUp(NetworkInterface card) {
        try {
            return card.isUp();
        } catch (SocketException gone) {
            return false;
        }
    }

    /** What browsers may call it by, as the door asks. */
    public Set<String> callable() {
        Set<String> all = new LinkedHashSet<>(given);
        ownName().ifPresent(all::add);
        addresses.forEach(address -> all.add(Numbers.inLink(address)));
        return all;
    }

    /** How other devices write it in a link, the best first; this machine's own name where none reaches it. */
    List<String> inLinks() {
        List<String> all = Stream.concat(
                        Stream.concat(ownName().stream(), given.stream()),
                        addresses.stream().map(Numbers::inLink))
                .distinct()
                .toList();
        return all.isEmpty() ? List.of("localhost") : all;
    }

    /** What is found even where the network knows no names: its first address, and its best name where it has none. */
    String surest() {
        return addresses.stream()
                .map(Numbers::inLink)
                .findFirst()
                .orElseGet(() -> HostNames.withoutPort(inLinks().get(0)));
    }
}
