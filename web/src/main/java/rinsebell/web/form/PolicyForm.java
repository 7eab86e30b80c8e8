package rinsebell.web.form;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.Policy;
import rinsebell.web.Codes;

/** Reads the house's own numbers; what is not typed stays as it is. */
final class PolicyForm {
    static final int LONGEST_MINUTES = 240;
    private static final int LONGEST_TEST_HOURS = 240;
    private static final int LONGEST_TEST_DAYS = 400;
    private static final int MOST_SLACK_GRAMS = 10;
    private static final int MOST_MONTHS = 120;
    private static final int MOST_DAYS = 400;
    private static final int LEAST_SECONDS = 5;
    private static final int MOST_SECONDS = 600;
    static final int LONGEST_SHELVED_MINUTES = 15;

    private PolicyForm() {}

    static Policy policy(Entries entries) {
        var now = entries.floor().salon().policy();
        return new Policy(
                minutes(entries, "applying", 1, now.applying()),
                working(entries, now.working()),
                bowl(entries, now.bowl()),
                checks(entries, now.checks()),
                ringing(entries, now.ringing()),
                skinTest(entries, now.skinTest()),
                longestOn(entries, now.longestOn()),
                entries.whole("weighingSlackGrams", 0, MOST_SLACK_GRAMS).orElse(now.weighingSlackGrams()),
                keeping(entries, now.keeping()));
    }

    private static Policy.Keeping keeping(Entries entries, Policy.Keeping now) {
        return new Policy.Keeping(
                entries.whole("keeping.recordMonths", 1, MOST_MONTHS).orElse(now.recordMonths()),
                entries.whole("keeping.textDays", 1, MOST_DAYS).orElse(now.textDays()),
                entries.whole("keeping.nameMinutes", 1, LONGEST_MINUTES).orElse(now.nameMinutes()));
    }

    private static Duration minutes(Entries entries, String field, int least, Duration now) {
        return entries.minutes(field, least, LONGEST_MINUTES).orElse(now);
    }

    private static Policy.WorkingTime working(Entries entries, Policy.WorkingTime now) {
        return new Policy.WorkingTime(
                minutes(entries, "working.walk", 0, now.walk()),
                minutes(entries, "working.foilsOut", 0, now.foilsOut()),
                minutes(entries, "working.rinsing", 1, now.rinsing()),
                minutes(entries, "working.soon", 0, now.soon()));
    }

    private static Policy.WaitingBowl bowl(Entries entries, Policy.WaitingBowl now) {
        var question = minutes(entries, "bowl.question", 1, now.question());
        var low = minutes(entries, "bowl.low", 1, now.low());
        inOrder(entries, "bowl.low", question, low);
        return new Policy.WaitingBowl(question, low);
    }

    private static Policy.LateCheck checks(Entries entries, Policy.LateCheck now) {
        var medium = minutes(entries, "checks.medium", 0, now.medium());
        var high = minutes(entries, "checks.high", 0, now.high());
        var highSooner = minutes(entries, "checks.highSooner", 0, now.highSooner());
        inOrder(entries, "checks.high", medium, high);
        inOrder(entries, "checks.highSooner", medium, highSooner);
        return new Policy.LateCheck(medium, high, highSooner, minutes(entries, "checks.round", 0, now.round()));
    }

    private static Policy.Ringing ringing(Entries entries, Policy.Ringing now) {
        return new Policy.Ringing(
                entries.whole("ringing.widerHighSeconds", LEAST_SECONDS, MOST_SECONDS)
                        .map(Duration::ofSeconds)
                        .orElse(now.widerHigh()),
                minutes(entries, "ringing.widerMedium", 1, now.widerMedium()),
                minutes(entries, "ringing.againHigh", 1, now.againHigh()),
                minutes(entries, "ringing.againMedium", 1, now.againMedium()),
                minutes(entries, "ringing.againLow", 1, now.againLow()),
                entries.minutes("ringing.longestShelved", 1, LONGEST_SHELVED_MINUTES)
                        .orElse(now.longestShelved()));
    }

    /** A bell gets louder with time, never quieter. */
    private static void inOrder(Entries entries, String field, Duration first, Duration second) {
        if (second.compareTo(first) < 0) {
            entries.fault(field, Fault.ENDS_BEFORE);
        }
    }

    private static Policy.SkinTestRule skinTest(Entries entries, Policy.SkinTestRule now) {
        var before = entries.whole("skinTest.beforeHours", 0, LONGEST_TEST_HOURS)
                .map(Duration::ofHours)
                .orElse(now.before());
        return new Policy.SkinTestRule(
                before,
                entries.whole("skinTest.validDays", 1, LONGEST_TEST_DAYS).orElse(now.validDays()));
    }

    /** An empty entry takes the house's figure away; a field that is not there leaves it. */
    private static Map<Kind, Duration> longestOn(Entries entries, Map<Kind, Duration> now) {
        var next = new EnumMap<Kind, Duration>(Kind.class);
        next.putAll(now);
        for (var kind : Kind.values()) {
            var field = "longestOn." + Codes.of(kind);
            if (!entries.all(field).isEmpty()) {
                next.remove(kind);
                entries.minutes(field, 1, LONGEST_MINUTES).ifPresent(longest -> next.put(kind, longest));
            }
        }
        return next;
    }
}
