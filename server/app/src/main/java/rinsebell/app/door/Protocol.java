package rinsebell.app.door;

import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;

/** What counts as HTTP here. */
final class Protocol {

    private static final int MOST_HEADER_BYTES = 8 * 1024;

    private static final String OTHER_METHOD = "X-HTTP-Method-Override";

    private Protocol() {}

    static void tighten(HttpConfiguration http) {
        http.setUriCompliance(UriCompliance.DEFAULT);
        http.setRequestHeaderSize(MOST_HEADER_BYTES);
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.addCustomizer(new SecureHeaders());
        http.addCustomizer((request, answer) -> methodAsSent(request));
    }

    /** The routes believe a header that names another method than the one that was sent; none gets that far. */
    private static Request methodAsSent(Request request) {
        if (!request.getHeaders().contains(OTHER_METHOD)) {
            return request;
        }
        HttpFields headers =
                HttpFields.build(request.getHeaders()).remove(OTHER_METHOD).asImmutable();
        return new Request.Wrapper(request) {
            @Override
            public HttpFields getHeaders() {
                return headers;
            }
        };
    }
}
