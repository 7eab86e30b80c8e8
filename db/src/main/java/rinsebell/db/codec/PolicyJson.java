package rinsebell.db.codec;

import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.salon.Policy.Keeping;
import rinsebell.floor.salon.Policy.LateCheck;
import rinsebell.floor.salon.Policy.Ringing;
import rinsebell.floor.salon.Policy.SkinTestRule;
import rinsebell.floor.salon.Policy.WaitingBowl;
import rinsebell.floor.salon.Policy.WorkingTime;

/** The house's own numbers. */
final class PolicyJson {

    private PolicyJson() {}

    static void write(Policy policy, Writing out) {
        out.duration("applying", policy.applying())
                .object("working", policy.working(), PolicyJson::writeWorking)
                .object("bowl", policy.bowl(), PolicyJson::writeBowl)
                .object("checks", policy.checks(), PolicyJson::writeChecks)
                .object("ringing", policy.ringing(), PolicyJson::writeRinging)
                .object("skin_test", policy.skinTest(), PolicyJson::writeSkinTest)
                .byConstant("longest_on", policy.longestOn(), (time, each) -> each.duration("time", time))
                .whole("weighing_slack_grams", policy.weighingSlackGrams())
                .object("keeping", policy.keeping(), PolicyJson::writeKeeping);
    }

    static Policy read(Reading in) {
        return new Policy(
                in.duration("applying"),
                in.object("working", PolicyJson::readWorking),
                in.object("bowl", PolicyJson::readBowl),
                in.object("checks", PolicyJson::readChecks),
                in.maybeObject("ringing", PolicyJson::readRinging).orElse(Ringing.DEFAULT),
                in.object("skin_test", PolicyJson::readSkinTest),
                in.byConstant("longest_on", Kind.class, each -> each.duration("time")),
                in.whole("weighing_slack_grams"),
                in.maybeObject("keeping", PolicyJson::readKeeping).orElse(Keeping.DEFAULT));
    }

    private static void writeWorking(WorkingTime working, Writing out) {
        out.duration("walk", working.walk())
                .duration("foils_out", working.foilsOut())
                .duration("rinsing", working.rinsing())
                .duration("soon", working.soon());
    }

    private static WorkingTime readWorking(Reading in) {
        return new WorkingTime(
                in.duration("walk"), in.duration("foils_out"), in.duration("rinsing"), in.duration("soon"));
    }

    private static void writeBowl(WaitingBowl bowl, Writing out) {
        out.duration("question", bowl.question()).duration("low", bowl.low());
    }

    private static WaitingBowl readBowl(Reading in) {
        return new WaitingBowl(in.duration("question"), in.duration("low"));
    }

    private static void writeChecks(LateCheck checks, Writing out) {
        out.duration("medium", checks.medium())
                .duration("high", checks.high())
                .duration("high_sooner", checks.highSooner())
                .duration("round", checks.round());
    }

    private static LateCheck readChecks(Reading in) {
        return new LateCheck(
                in.duration("medium"), in.duration("high"), in.duration("high_sooner"), in.duration("round"));
    }

    private static void writeRinging(Ringing ringing, Writing out) {
        out.duration("wider_high", ringing.widerHigh())
                .duration("wider_medium", ringing.widerMedium())
                .duration("again_high", ringing.againHigh())
                .duration("again_medium", ringing.againMedium())
                .duration("again_low", ringing.againLow())
                .duration("longest_shelved", ringing.longestShelved());
    }

    private static Ringing readRinging(Reading in) {
        return new Ringing(
                in.duration("wider_high"),
                in.duration("wider_medium"),
                in.duration("again_high"),
                in.duration("again_medium"),
                in.duration("again_low"),
                in.duration("longest_shelved"));
    }

    private static void writeSkinTest(SkinTestRule rule, Writing out) {
        out.duration("before", rule.before()).whole("valid_days", rule.validDays());
    }

    private static SkinTestRule readSkinTest(Reading in) {
        return new SkinTestRule(in.duration("before"), in.whole("valid_days"));
    }

    private static void writeKeeping(Keeping keeping, Writing out) {
        out.whole("record_months", keeping.recordMonths())
                .whole("text_days", keeping.textDays())
                .whole("name_minutes", keeping.nameMinutes());
    }

    private static Keeping readKeeping(Reading in) {
        return new Keeping(in.whole("record_months"), in.whole("text_days"), in.whole("name_minutes"));
    }
}
