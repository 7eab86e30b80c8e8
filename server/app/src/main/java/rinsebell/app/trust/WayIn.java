package rinsebell.app.trust;

import java.util.List;
import java.util.Optional;

/**
 * How other devices come in.
 *
 * @param secure addresses over HTTPS, the best first; never none
 * @param welcome where a device that does not trust this server yet begins, over HTTP
 * @param fingerprint of the authority to be trusted; empty where the salon has its certificate from elsewhere
 */
public record WayIn(List<String> secure, String welcome, Optional<Fingerprint> fingerprint) {

    public WayIn {
        secure = List.copyOf(secure);
    }
}
