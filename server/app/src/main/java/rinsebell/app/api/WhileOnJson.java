package rinsebell.app.api;

import java.util.Map;
import rinsebell.floor.rule.WhileOn;

/**
 * What a head may have while this is on it.
 *
 * @param known whether every recipe on it is known; while one is not, nothing may be planned
 * @param offScalpOnly whether none of it may touch the scalp
 * @param covers by the code of each cover
 * @param heats by the code of each heat
 */
record WhileOnJson(
        boolean known,
        boolean offScalpOnly,
        Map<String, Map<String, Object>> covers,
        Map<String, Map<String, Object>> heats) {
    static WhileOnJson of(WhileOn on) {
        return new WhileOnJson(
                on.known(), on.offScalpOnly(), AllowanceJson.covers(on.limits()), AllowanceJson.heats(on.limits()));
    }
}
