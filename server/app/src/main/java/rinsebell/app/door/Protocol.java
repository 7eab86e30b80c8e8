package rinsebell.app.door;

import java.util.Set;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;

/** What counts as HTTP here. */
final class Protocol {

    private static final int MOST_HEADER_BYTES = 8 * 1024;

    private static final Set<String> UNHEARD =
            Set.of("X-HTTP-Method-Override", "Upgrade", "Sec-WebSocket-Key", "Sec-WebSocket-Version");

    private Protocol() {}

    static void tighten(HttpConfiguration http) {
        http.setUriCompliance(UriCompliance.DEFAULT);
        http.setRequestHeaderSize(MOST_HEADER_BYTES);
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.addCustomizer(new SecureHeaders());
        http.addCustomizer((request, answer) -> asPlain(request));
        http.addCustomizer((request, answer) -> Bodies.knowingItsWire(request));
    }

    /**
     * The routes believe a header that names another method than the one that was sent, and answer whoever asks for
     * another protocol before the door has looked at them; neither is heard.
     */
    private static Request asPlain(Request request) {
        if (UNHEARD.stream().noneMatch(request.getHeaders()::contains)) {
            return request;
        }
        HttpFields.Mutable headers = HttpFields.build(request.getHeaders());
        UNHEARD.forEach(headers::remove);
        HttpFields plain = headers.asImmutable();
        return new Request.Wrapper(request) {
            @Override
            public HttpFields getHeaders() {
                return plain;
            }
        };
    }
}
