package rinsebell.app.trust;

import java.time.Instant;
import java.util.Optional;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.CertificateUnfit;

/** Where what is shown over TLS comes from. */
interface Credentials {

    /**
     * What is to be shown from now on; empty for the same as before. The first time there is one.
     *
     * @throws CertificateUnfit if what has changed can't be used
     */
    Optional<Certificate> newer(Instant now) throws CertificateUnfit;

    /** The authority that devices have to be told to trust; empty where they trust it already. */
    Optional<Authority> authority();
}
