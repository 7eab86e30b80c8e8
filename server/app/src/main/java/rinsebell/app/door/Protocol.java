package rinsebell.app.door;

import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConfiguration;

/** What counts as HTTP here. */
final class Protocol {

    private static final int MOST_HEADER_BYTES = 8 * 1024;

    private Protocol() {}

    static void tighten(HttpConfiguration http) {
        http.setUriCompliance(UriCompliance.DEFAULT);
        http.setRequestHeaderSize(MOST_HEADER_BYTES);
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.addCustomizer(new SecureHeaders());
    }
}
