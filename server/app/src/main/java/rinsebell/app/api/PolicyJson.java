package rinsebell.app.api;

import java.util.Map;
import java.util.TreeMap;
import rinsebell.floor.salon.Policy;
import rinsebell.web.Codes;

/** The house's own numbers, in the shape in which they are also typed in: minutes, but where the name says else. */
record PolicyJson(
        long applying,
        WorkingJson working,
        BowlsJson bowl,
        ChecksJson checks,
        RingingJson ringing,
        SkinTestJson skinTest,
        Map<String, Long> longestOn,
        int weighingSlackGrams,
        KeepingJson keeping) {

    record WorkingJson(long walk, long foilsOut, long rinsing, long soon) {}

    record BowlsJson(long question, long low) {}

    record ChecksJson(long medium, long high, long highSooner, long round) {}

    record RingingJson(
            long widerHighSeconds,
            long widerMedium,
            long againHigh,
            long againMedium,
            long againLow,
            long longestShelved) {
        static RingingJson of(Policy.Ringing ringing) {
            return new RingingJson(
                    ringing.widerHigh().toSeconds(),
                    ringing.widerMedium().toMinutes(),
                    ringing.againHigh().toMinutes(),
                    ringing.againMedium().toMinutes(),
                    ringing.againLow().toMinutes(),
                    ringing.longestShelved().toMinutes());
        }
    }

    record SkinTestJson(long beforeHours, int validDays) {}

    record KeepingJson(int recordMonths, int textDays, int nameMinutes) {}

    static PolicyJson of(Policy policy) {
        var working = policy.working();
        var checks = policy.checks();
        Map<String, Long> longestOn = new TreeMap<>();
        policy.longestOn().forEach((kind, longest) -> longestOn.put(Codes.of(kind), longest.toMinutes()));
        return new PolicyJson(
                policy.applying().toMinutes(),
                new WorkingJson(
                        working.walk().toMinutes(),
                        working.foilsOut().toMinutes(),
                        working.rinsing().toMinutes(),
                        working.soon().toMinutes()),
                new BowlsJson(
                        policy.bowl().question().toMinutes(),
                        policy.bowl().low().toMinutes()),
                new ChecksJson(
                        checks.medium().toMinutes(),
                        checks.high().toMinutes(),
                        checks.highSooner().toMinutes(),
                        checks.round().toMinutes()),
                RingingJson.of(policy.ringing()),
                new SkinTestJson(
                        policy.skinTest().before().toHours(), policy.skinTest().validDays()),
                longestOn,
                policy.weighingSlackGrams(),
                new KeepingJson(
                        policy.keeping().recordMonths(),
                        policy.keeping().textDays(),
                        policy.keeping().nameMinutes()));
    }
}
