package rinsebell.app.door;

import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;

/**
 * The headers of every answer, put on before anything else sees the request, so that no error page goes without.
 *
 * <p>Referrer-Policy is {@code same-origin}, not {@code no-referrer}: under the latter a browser sends
 * {@code Origin: null} with a form's POST (Fetch, "append a request Origin header"), and the exact check would refuse
 * our own forms.
 */
final class SecureHeaders implements HttpConfiguration.Customizer {

    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
            + "font-src 'self'; connect-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; "
            + "object-src 'none'; frame-ancestors 'none'";

    /** By it our pages tell this server from whatever else may answer at its address, such as the sign-in of a network. */
    static final String OURS = "Rinsebell-Answer";

    static final Map<String, String> ALL = all();

    private static Map<String, String> all() {
        Map<String, String> headers = new LinkedHashMap<>();
        headers.put(OURS, "true");
        headers.put("Content-Security-Policy", POLICY);
        headers.put("X-Content-Type-Options", "nosniff");
        headers.put("X-Frame-Options", "DENY");
        headers.put("Referrer-Policy", "same-origin");
        headers.put("Cross-Origin-Resource-Policy", "same-origin");
        headers.put("Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()");
        // Everything but the assets, which say otherwise, is the state of a moment and about people.
        headers.put("Cache-Control", "no-store");
        return headers;
    }

    @Override
    public Request customize(Request request, HttpFields.Mutable answer) {
        putOn(answer);
        return request;
    }

    static void putOn(HttpFields.Mutable answer) {
        ALL.forEach(answer::put);
    }
}
