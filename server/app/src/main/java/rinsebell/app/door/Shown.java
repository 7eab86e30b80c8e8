package rinsebell.app.door;

import org.eclipse.jetty.util.ssl.SslContextFactory;

/** The certificate that whoever connects over TLS is shown. It can be another for the next; who is connected stays so. */
public final class Shown {

    /** RFC 9325, section 4.2: keys for each connection alone, and what is sent can't be changed on its way. */
    private static final String[] RECOMMENDED = {
        "TLS_AES_\\d+_GCM_.*", "TLS_CHACHA20_.*", "TLS_ECDHE_(ECDSA|RSA)_WITH_(AES_\\d+_GCM|CHACHA20_POLY1305)_.*"
    };

    private final SslContextFactory.Server context = new SslContextFactory.Server();
    private volatile Certificate certificate;

    public Shown(Certificate first) {
        certificate = first;
        context.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        context.setIncludeCipherSuites(RECOMMENDED);
        context.setKeyStorePassword("");
        context.setSniRequired(false);
        // A handshake costs whoever asks for it little, and no browser asks for a second one (RFC 9325, section 3.5).
        context.setRenegotiationAllowed(false);
        context.setKeyStore(first.store());
    }

    public Certificate certificate() {
        return certificate;
    }

    /** Shows another from now on. */
    public void change(Certificate next) {
        try {
            context.reload(same -> context.setKeyStore(next.store()));
        } catch (Exception e) {
            throw new IllegalStateException("what could be shown before can be shown", e);
        }
        certificate = next;
    }

    SslContextFactory.Server context() {
        return context;
    }
}
