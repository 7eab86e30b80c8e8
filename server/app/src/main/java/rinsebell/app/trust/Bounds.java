package rinsebell.app.trust;

import java.net.InetAddress;
import java.security.cert.X509Certificate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.NameConstraintValidatorException;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.asn1.x509.PKIXNameConstraintValidator;

/**
 * What an authority may vouch for, and nothing else (RFC 5280, section 4.2.1.10): the names that the salon gave, what lies
 * below them, and addresses that are nobody's on the open network. Whole ranges of those, because a machine's address
 * changes.
 */
final class Bounds {

    /** Loopback (RFC 1122, 4291), private (RFC 1918, 4193) and of one link (RFC 3927, 4291): an address, then its mask. */
    private static final List<byte[]> RANGES = List.of(
            range(Numbers.bytes(127, 0, 0, 0), 8),
            range(Numbers.bytes(10, 0, 0, 0), 8),
            range(Numbers.bytes(172, 16, 0, 0), 12),
            range(Numbers.bytes(192, 168, 0, 0), 16),
            range(Numbers.bytes(169, 254, 0, 0), 16),
            range(Numbers.bytes(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1), 128),
            range(Numbers.bytes(0xfc, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0), 7),
            range(Numbers.bytes(0xfe, 0x80, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0), 10));

    private final PKIXNameConstraintValidator permitted = new PKIXNameConstraintValidator();
    private final List<String> hosts;

    private Bounds(NameConstraints constraints) {
        permitted.intersectPermittedSubtree(constraints.getPermittedSubtrees());
        hosts = Stream.of(constraints.getPermittedSubtrees())
                .map(GeneralSubtree::getBase)
                .filter(base -> base.getTagNo() == GeneralName.dNSName)
                .map(base -> base.getName().toString())
                .toList();
    }

    /** The names among them. */
    List<String> hosts() {
        return hosts;
    }

    /** Those that an authority was made with. */
    static Bounds of(X509Certificate authority) {
        byte[] written = Objects.requireNonNull(
                authority.getExtensionValue(Extension.nameConstraints.getId()),
                "an authority of this house has bounds");
        return new Bounds(
                NameConstraints.getInstance(ASN1OctetString.getInstance(written).getOctets()));
    }

    /**
     * For an authority to be made.
     *
     * @param given names, and addresses outside the ranges, that a person gave
     */
    static NameConstraints around(Reach given) {
        Stream<GeneralName> hosts = given.hosts().stream().map(host -> new GeneralName(GeneralName.dNSName, host));
        Stream<byte[]> ranges =
                Stream.concat(RANGES.stream(), given.addresses().stream().map(Bounds::only));
        return new NameConstraints(
                Stream.concat(
                                hosts,
                                ranges.map(range -> new GeneralName(GeneralName.iPAddress, new DEROctetString(range))))
                        .map(GeneralSubtree::new)
                        .toArray(GeneralSubtree[]::new),
                null);
    }

    private static byte[] only(InetAddress address) {
        return range(address.getAddress(), 8 * address.getAddress().length);
    }

    private static byte[] range(byte[] address, int bits) {
        byte[] range = Arrays.copyOf(address, 2 * address.length);
        for (int bit = 0; bit < bits; bit++) {
            range[address.length + bit / 8] |= (byte) (0x80 >> bit % 8);
        }
        return range;
    }

    boolean permit(GeneralName name) {
        try {
            permitted.checkPermitted(name);
            return true;
        } catch (NameConstraintValidatorException outside) {
            return false;
        }
    }
}
