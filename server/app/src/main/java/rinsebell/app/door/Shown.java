package rinsebell.app.door;

import org.eclipse.jetty.util.ssl.SslContextFactory;

/** The certificate that whoever connects over TLS is shown. It can be another for the next; who is connected stays so. */
public final class Shown {

    private final SslContextFactory.Server context = new SslContextFactory.Server();
    private volatile Certificate certificate;

    public Shown(Certificate first) {
        certificate = first;
        context.setKeyStorePassword("");
        context.setSniRequired(false);
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
