package rinsebell.app.door;

import org.eclipse.jetty.util.ssl.SslContextFactory;

/** The certificate that whoever connects over TLS is shown. It can be another for the next; who is connected stays so. */
public final class Shown {

    /** What RFC 9325, section 4.2, would rather not see; whatever speaks TLS 1.2 at all has had better for ten years. */
    private static final String OBSOLETE = "^.*_CBC_.*$";

    private final SslContextFactory.Server context = new SslContextFactory.Server();
    private volatile Certificate certificate;

    public Shown(Certificate first) {
        certificate = first;
        context.setKeyStorePassword("");
        context.setSniRequired(false);
        context.addExcludeCipherSuites(OBSOLETE);
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
