package rinsebell.app.door;

/** A certificate or its key can't be used. The message is the reason, for the person who named the files. */
public final class CertificateUnfit extends Exception {

    private static final long serialVersionUID = 1;

    public CertificateUnfit(String reason) {
        super(reason);
    }
}
