package rinsebell.app.trust;

import java.security.KeyStore;
import java.security.cert.CertPathValidator;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Set;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A device that was told to trust one authority and nobody else: the JDK's own validator (PKIX, RFC 5280, section 6). */
final class Validating {

    private final X509Certificate trusted;

    Validating(X509Certificate trusted) {
        this.trusted = trusted;
    }

    /** @throws java.security.cert.CertPathValidatorException when the chain does not hold at that instant */
    void validate(List<X509Certificate> chain, Instant at) throws Exception {
        PKIXParameters asked = new PKIXParameters(Set.of(new TrustAnchor(trusted, null)));
        asked.setRevocationEnabled(false);
        asked.setDate(Date.from(at));
        CertPathValidator.getInstance("PKIX")
                .validate(CertificateFactory.getInstance("X.509").generateCertPath(chain), asked);
    }

    /** What it connects with; names are checked as browsers do (RFC 9525). */
    SSLContext connecting() throws Exception {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setCertificateEntry("it", trusted);
        TrustManagerFactory managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(store);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return context;
    }
}
