package rinsebell.app.trust;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x509.GeneralName;

/**
 * Under what browsers may find this server right now.
 *
 * @param hosts names, in small letters, without a port
 * @param addresses of this machine, as numbers; they change when its network gives it others
 */
public record Reach(SortedSet<String> hosts, Set<InetAddress> addresses) {

    /** Of this machine for itself, over TLS as well. */
    static final List<InetAddress> OWN =
            List.of(Numbers.address(127, 0, 0, 1), Numbers.address(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1));

    public Reach {
        hosts = new TreeSet<>(hosts);
        addresses = Set.copyOf(addresses);
    }

    /** Each as a certificate names it (RFC 5280, section 4.2.1.6), always in the same order. */
    List<GeneralName> named() {
        return Stream.concat(
                        hosts.stream().map(host -> new GeneralName(GeneralName.dNSName, host)),
                        Stream.concat(OWN.stream(), addresses.stream())
                                .sorted(Numbers.IN_ORDER)
                                .map(address -> new GeneralName(
                                        GeneralName.iPAddress, new DEROctetString(address.getAddress()))))
                .toList();
    }

    /** As a person writes it. */
    static String told(GeneralName name) {
        try {
            return name.getTagNo() == GeneralName.iPAddress
                    ? Numbers.inLink(InetAddress.getByAddress(
                            ASN1OctetString.getInstance(name.getName()).getOctets()))
                    : name.getName().toString();
        } catch (UnknownHostException e) {
            throw new IllegalArgumentException("no address: " + name, e);
        }
    }
}
