package rinsebell.app.door;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which POSTs may come in.
 *
 * <p>Every browser of the last years sends {@code Origin} with a POST of another site's page, so one that is there must
 * be exactly ours: the scheme and the {@code Host} that was checked before. {@code null} is not ours. One that is
 * missing leaves a program or a very old browser. Such a POST may come in when the browser itself says that it is our
 * own page or the address bar ({@code Sec-Fetch-Site}), or when it carries {@code Idempotency-Key} or JSON: another
 * site's page can send those only after a preflight, and no preflight is ever granted here.
 */
final class Origins {

    private static final Set<String> OUR_OWN_PAGES = Set.of("same-origin", "none");

    private static final String NAVIGATE = "navigate";

    private Origins() {}

    /**
     * Whether a POST may come in.
     *
     * @param ours the scheme and the {@code Host} header, which has been checked
     */
    static boolean allow(Said said, String ours) {
        if (said.origin() != null) {
            return said.origin().equals(ours);
        }
        if (said.fetchSite() != null) {
            return OUR_OWN_PAGES.contains(said.fetchSite());
        }
        return said.needsPreflight();
    }

    /**
     * Whether a GET may come in. A link on another site's page may lead here; anything else there, such as a script or
     * a picture, may read nothing and is not to sit in the feed's seats either.
     */
    static boolean allowReading(Said said, String ours) {
        boolean follows = said.fetchSite() == null || NAVIGATE.equals(said.fetchMode());
        return (said.origin() == null && follows) || allow(said, ours);
    }

    /**
     * What the request says about where it comes from.
     *
     * @param origin the {@code Origin} header
     * @param fetchSite the {@code Sec-Fetch-Site} header
     * @param fetchMode the {@code Sec-Fetch-Mode} header
     * @param needsPreflight whether another site's page would have to ask first before it sent such a request
     */
    record Said(
            @Nullable String origin,
            @Nullable String fetchSite,
            @Nullable String fetchMode,
            boolean needsPreflight) {}
}
