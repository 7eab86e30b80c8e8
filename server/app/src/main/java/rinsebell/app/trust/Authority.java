package rinsebell.app.trust;

import java.security.KeyPair;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import rinsebell.app.door.Certificate;

/**
 * The salon's own authority: what its devices trust, so that they believe this server.
 *
 * <p>It is two certificates. The root is what a device is given; its key signs once and is kept nowhere. It vouches for a
 * signer, and only the signer's key lies on the disk. Validators need not look at the bounds of what somebody chose to
 * trust (RFC 5280, section 6.1, takes only a name and a key from it), but all look at those of the signer. So not even
 * whoever steals the key can vouch for anything but the salon's names.
 */
public final class Authority {

    static final Duration HOLDS = Duration.ofDays(3_650);

    /** How long what it vouches for holds. */
    static final Duration VOUCHES = Duration.ofDays(90);

    /** The clocks of devices are wrong by hours. */
    private static final Duration BEFORE = Duration.ofDays(1);

    private static final int NAME_BYTES = 3;

    private final Certificate signer;

    private Authority(Certificate signer) {
        this.signer = signer;
    }

    /** @param signer with the root behind it, as {@link #kept} told */
    static Authority of(Certificate signer) {
        return new Authority(signer);
    }

    /** @param given the names, and addresses that are not private, that it may vouch for */
    static Authority make(Reach given, Instant now) {
        byte[] number = new byte[NAME_BYTES];
        new SecureRandom().nextBytes(number);
        String name = "CN=Rinsebell " + HexFormat.of().withUpperCase().formatHex(number);
        X500Principal root = new X500Principal(name);
        X500Principal signer = new X500Principal(name + " signer");
        KeyPair rootKey = Issue.key();
        KeyPair signerKey = Issue.key();
        NameConstraints bounds = Bounds.around(given);
        Instant from = now.minus(BEFORE);
        X509Certificate trusted = asAuthority(
                        new Issue(root, rootKey.getPublic(), root, rootKey.getPublic(), from, from.plus(HOLDS)),
                        bounds,
                        1)
                .signed(rootKey.getPrivate());
        X509Certificate below = asAuthority(
                        new Issue(root, rootKey.getPublic(), signer, signerKey.getPublic(), from, from.plus(HOLDS)),
                        bounds,
                        0)
                .signed(rootKey.getPrivate());
        return new Authority(Certificate.of(List.of(below, trusted), signerKey.getPrivate()));
    }

    private static Issue asAuthority(Issue issue, NameConstraints bounds, int pathLength) {
        return issue.with(Extension.basicConstraints, true, new BasicConstraints(pathLength))
                .with(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign))
                .with(Extension.nameConstraints, true, bounds);
    }

    /** What has to be kept of it, and kept to itself. */
    Certificate kept() {
        return signer;
    }

    /** What a device is given to trust. */
    public X509Certificate root() {
        return signer.chain().get(1);
    }

    /** What devices call it in their lists. */
    String name() {
        return root().getSubjectX500Principal().getName().substring("CN=".length());
    }

    /** The names that it may vouch for; addresses besides. */
    List<String> hosts() {
        return bounds().hosts();
    }

    /** The same as files have it (DER). */
    public byte[] der() {
        try {
            return root().getEncoded();
        } catch (CertificateEncodingException e) {
            throw new IllegalStateException("it was read or written before", e);
        }
    }

    public Fingerprint fingerprint() {
        return Fingerprint.of(der());
    }

    /** Those that it may not vouch for, because they were not given when it was made. */
    List<GeneralName> outside(Reach reach) {
        Bounds bounds = bounds();
        return reach.named().stream().filter(name -> !bounds.permit(name)).toList();
    }

    private Bounds bounds() {
        return Bounds.of(signer.chain().get(0));
    }

    /** What a certificate of this server says, of what it can be reached by. */
    GeneralNames names(Reach reach) {
        Bounds bounds = bounds();
        return new GeneralNames(reach.named().stream().filter(bounds::permit).toArray(GeneralName[]::new));
    }

    /** Until when it holds. */
    Instant ends() {
        return signer.ends();
    }

    /** A new key with a certificate for each name that it may vouch for; it never holds longer than the authority. */
    Certificate vouch(Reach reach, Instant now) {
        KeyPair key = Issue.key();
        return Certificate.of(
                List.of(
                        issue(key.getPublic(), now)
                                .with(Extension.basicConstraints, true, new BasicConstraints(false))
                                .with(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature))
                                .with(Extension.subjectAlternativeName, false, names(reach))
                                .signed(signer.key()),
                        signer.chain().get(0)),
                key.getPrivate());
    }

    private Issue issue(PublicKey key, Instant now) {
        X509Certificate by = signer.chain().get(0);
        Instant from = later(now.minus(BEFORE), by.getNotBefore().toInstant());
        Instant end = ends();
        Instant until = from.plus(VOUCHES);
        return new Issue(
                by.getSubjectX500Principal(),
                by.getPublicKey(),
                new X500Principal("CN=Rinsebell server"),
                key,
                from,
                until.isBefore(end) ? until : end);
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
