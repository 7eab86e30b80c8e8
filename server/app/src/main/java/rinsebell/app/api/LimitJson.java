package rinsebell.app.api;

import rinsebell.floor.clock.Limit;
import rinsebell.web.Codes;

/**
 * Why hair must be rinsed by an instant.
 *
 * @param hard past it hair or skin is hurt
 */
record LimitJson(String at, String why, boolean hard) {
    static LimitJson of(Limit limit) {
        return new LimitJson(Json.instant(limit.at()), Codes.of(limit.why()), limit.hard());
    }
}
