package rinsebell.app.trust;

import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Instant;
import java.util.Date;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.ASN1Encodable;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** One certificate while it is written (RFC 5280), for servers only, with keys on the curve P-256. */
final class Issue {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int SERIAL_BITS = 128;

    private final X509v3CertificateBuilder builder;

    /** @param by who vouches */
    Issue(X500Principal by, PublicKey byKey, X500Principal whom, PublicKey key, Instant from, Instant until) {
        builder = new JcaX509v3CertificateBuilder(by, serial(), Date.from(from), Date.from(until), whom, key);
        try {
            JcaX509ExtensionUtils ids = new JcaX509ExtensionUtils();
            with(Extension.subjectKeyIdentifier, false, ids.createSubjectKeyIdentifier(key));
            with(Extension.authorityKeyIdentifier, false, ids.createAuthorityKeyIdentifier(byKey));
            with(Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has SHA-1", e);
        }
    }

    /** Positive, as section 4.1.2.2 asks for, and nobody can guess it. */
    private static BigInteger serial() {
        return new BigInteger(SERIAL_BITS, RANDOM).setBit(SERIAL_BITS - 1);
    }

    static KeyPair key() {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
            generator.initialize(new ECGenParameterSpec("secp256r1"), RANDOM);
            return generator.generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has this curve", e);
        }
    }

    Issue with(ASN1ObjectIdentifier kind, boolean isCritical, ASN1Encodable value) {
        try {
            builder.addExtension(kind, isCritical, value);
            return this;
        } catch (CertIOException e) {
            throw new IllegalArgumentException("an extension that can't be written", e);
        }
    }

    X509Certificate signed(PrivateKey by) {
        try {
            return new JcaX509CertificateConverter()
                    .getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(by)));
        } catch (OperatorCreationException | GeneralSecurityException e) {
            throw new IllegalStateException("every JDK signs so", e);
        }
    }
}
