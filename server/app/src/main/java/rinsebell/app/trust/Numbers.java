package rinsebell.app.trust;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.bouncycastle.util.IPAddress;

/** Addresses that are numbers: looking them up asks nobody. */
final class Numbers {

    static final Comparator<InetAddress> IN_ORDER = Comparator.comparing(
            InetAddress::getAddress,
            (one, other) -> one.length == other.length
                    ? Arrays.compareUnsigned(one, other)
                    : Integer.compare(one.length, other.length));

    private static final Pattern ZEROS = Pattern.compile("(?<![0-9a-f])0(:0)+(?![0-9a-f])");

    private Numbers() {}

    /** What a text says as a number, in brackets or not; empty for a name. */
    static Optional<InetAddress> read(String text) {
        String bare = text.startsWith("[") && text.endsWith("]") ? text.substring(1, text.length() - 1) : text;
        if (!IPAddress.isValid(bare)) {
            return Optional.empty();
        }
        try {
            return Optional.of(InetAddress.getByName(bare));
        } catch (UnknownHostException e) {
            return Optional.empty();
        }
    }

    /** @param bytes four or sixteen, from 0 to 255 */
    static InetAddress address(int... bytes) {
        try {
            return InetAddress.getByAddress(bytes(bytes));
        } catch (UnknownHostException e) {
            throw new IllegalArgumentException("an address has four or sixteen bytes", e);
        }
    }

    static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }

    /** As it is written in a link, and as browsers name it (RFC 3986, section 3.2.2; RFC 5952, section 4). */
    static String inLink(InetAddress address) {
        String text = address.getHostAddress().replaceFirst("%.*", "");
        return text.contains(":") ? "[" + shortened(text) + "]" : text;
    }

    /** The first of the longest runs of zeros is left out. */
    private static String shortened(String groups) {
        String zeros = ZEROS.matcher(groups)
                .results()
                .map(MatchResult::group)
                .reduce("", (one, other) -> other.length() > one.length() ? other : one);
        return zeros.isEmpty() ? groups : groups.replaceFirst("(^|:)" + zeros + "(:|$)", "::");
    }
}
