package rinsebell.app.trust;

import java.io.IOException;
import java.nio.file.Path;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.CertificateUnfit;

/** What the salon's own authority vouches for; made anew in time, and when the names or addresses change. */
final class Vouched implements Credentials {

    /** It is renewed when no more than this is left of it. */
    static final Duration LEFT = Duration.ofDays(30);

    private static final Logger LOG = LoggerFactory.getLogger(Vouched.class);

    private final Authority authority;
    private final Whereabouts whereabouts;
    private final KeyFile file;
    private @Nullable Certificate current;

    private Vouched(Authority authority, Whereabouts whereabouts, KeyFile file) {
        this.authority = authority;
        this.whereabouts = whereabouts;
        this.file = file;
    }

    /**
     * By the authority that a folder keeps, or by a new one where it keeps none.
     *
     * @throws CertificateUnfit if it keeps one that can't be used
     */
    static Vouched in(Path folder, Whereabouts whereabouts, Instant now) throws CertificateUnfit {
        KeyFile kept = new KeyFile(folder.resolve("authority.pem"));
        Authority authority = kept.exists() ? read(kept, now) : made(kept, whereabouts.given(), now);
        authority
                .outside(whereabouts.given())
                .forEach(name -> LOG.warn(
                        "No device will believe this server under {}, because its authority was made without that name. {}",
                        Reach.told(name),
                        another(folder)));
        return new Vouched(authority, whereabouts, new KeyFile(folder.resolve("server.pem")));
    }

    private static Authority read(KeyFile kept, Instant now) throws CertificateUnfit {
        Path folder = kept.path().resolveSibling("");
        Authority authority;
        try {
            authority = Authority.of(kept.read());
        } catch (CertificateUnfit e) {
            throw new CertificateUnfit(
                    e.getMessage() + " Bring it back from a copy of the folder. If there is none: " + another(folder));
        }
        if (!now.isBefore(authority.ends())) {
            throw new CertificateUnfit("The authority in " + kept.path() + " ended at " + authority.ends() + ", unless "
                    + "the clock of this machine is wrong. " + another(folder));
        }
        return authority;
    }

    private static Authority made(KeyFile kept, Reach given, Instant now) throws CertificateUnfit {
        Authority authority = Authority.make(given, now);
        try {
            kept.write(authority.kept());
        } catch (IOException e) {
            throw new CertificateUnfit(
                    "The authority of this server can't be kept in " + kept.path() + ": " + e.getMessage());
        }
        return authority;
    }

    private static String another(Path folder) {
        return "For another authority, which every device has to be told to trust anew, stop the server, move the folder "
                + folder + " away, and start it again.";
    }

    @Override
    public Optional<Certificate> newer(Instant now) {
        Certificate before = current == null ? kept().orElse(null) : current;
        if (before == null || isDue(before, now)) {
            current = authority.vouch(whereabouts.now(), now);
            keep(current);
            return Optional.of(current);
        }
        boolean isFirst = current == null;
        current = before;
        return isFirst ? Optional.of(before) : Optional.empty();
    }

    private Optional<Certificate> kept() {
        try {
            return file.exists() ? Optional.of(file.read()) : Optional.empty();
        } catch (CertificateUnfit e) {
            LOG.warn("{} Another is made in its place.", e.getMessage());
            return Optional.empty();
        }
    }

    /** One that is not on the disk is as good until the next start. */
    private void keep(Certificate made) {
        try {
            file.write(made);
        } catch (IOException e) {
            LOG.warn("{} can't be written: {}", file.path(), e.toString());
        }
    }

    private boolean isDue(Certificate certificate, Instant now) {
        X509Certificate shown = certificate.chain().get(0);
        boolean isOfAnother =
                !certificate.chain().get(1).equals(authority.kept().chain().get(0));
        boolean isTooEarly = now.isBefore(shown.getNotBefore().toInstant());
        boolean isNearItsEnd = certificate.ends().isBefore(authority.ends())
                && !now.isBefore(certificate.ends().minus(LEFT));
        return isOfAnother || isTooEarly || isNearItsEnd || !names(shown).equals(authority.names(whereabouts.now()));
    }

    private static GeneralNames names(X509Certificate certificate) {
        byte[] written = certificate.getExtensionValue(Extension.subjectAlternativeName.getId());
        return GeneralNames.getInstance(ASN1OctetString.getInstance(written).getOctets());
    }

    @Override
    public Optional<Authority> authority() {
        return Optional.of(authority);
    }
}
