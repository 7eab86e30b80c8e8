package rinsebell.floor.rule;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.clock.Terms;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.SkinTest;

/**
 * What the answers at the gate refuse. Sources: FDA, "Hair Dyes" (skin test two days before, each time); the mandatory
 * dye warnings of Regulation (EC) No 1223/2009, Annex III (under 16, earlier reaction, irritated scalp); henna and metal
 * salts: common practice, no source. There is no override.
 */
public final class GateRules {
    private GateRules() {}

    /**
     * What the answers refuse of a plan: besides what is known to be in the bowl, what may be in it.
     *
     * @param gate the answers
     * @param terms of the bowl
     * @param zone where it would go
     * @param at when
     */
    public static List<Reason> judgePlan(Gate gate, Terms terms, Zone zone, Instant at, Salon salon) {
        var found = new ArrayList<>(judge(gate, terms, zone, at, salon));
        if (hasMetal(gate) && terms.mayContainPeroxide()) {
            found.add(Reason.of(ReasonCode.METAL_ON_HAIR));
        }
        return found.stream().distinct().toList();
    }

    /**
     * What the answers refuse of what is known to be in a bowl.
     *
     * @param gate the answers
     * @param terms of the bowl
     * @param zone where it would go
     * @param at when
     */
    public static List<Reason> judge(Gate gate, Terms terms, Zone zone, Instant at, Salon salon) {
        var found = new ArrayList<Reason>();
        if (!gate.isComplete()) {
            found.add(Reason.of(ReasonCode.GATE_OPEN));
        }
        if (zone == Zone.ON_SCALP && gate.scalp() != null && gate.scalp() != Gate.Scalp.FINE) {
            found.add(Reason.of(ReasonCode.SCALP_NOT_SOUND, gate.scalp()));
        }
        if (terms.containsDye()) {
            dye(gate, zone, at, salon, found);
        }
        if (hasMetal(gate) && (terms.isLightener() || terms.containsPeroxide())) {
            found.add(Reason.of(ReasonCode.METAL_ON_HAIR));
        }
        return found;
    }

    private static void dye(Gate gate, Zone zone, Instant at, Salon salon, List<Reason> found) {
        var test = Optional.ofNullable(gate.skinTest());
        var reactedNow =
                test.filter(known -> known.result() == SkinTest.Result.REACTED).isPresent();
        if (reactedNow || gate.earlierReaction() == Gate.YesNo.YES) {
            found.add(Reason.of(ReasonCode.DYE_REACTION));
        }
        if (gate.under16() == Gate.YesNo.YES) {
            found.add(Reason.of(ReasonCode.UNDER_16));
        }
        if (zone == Zone.ON_SCALP && test.isPresent() && !reactedNow && !isValid(test.get(), at, salon)) {
            var rule = salon.policy().skinTest();
            found.add(Reason.of(ReasonCode.NO_SKIN_TEST, rule.before(), rule.validDays()));
        }
    }

    /** Without reaction, applied the house's time before (in whole days of the calendar), and not too long ago. */
    public static boolean isValid(SkinTest test, Instant at, Salon salon) {
        var applied = test.applied();
        if (test.result() != SkinTest.Result.NO_REACTION || applied == null) {
            return false;
        }
        var rule = salon.policy().skinTest();
        var today = salon.dayOf(at);
        return !applied.isAfter(today.minusDays(wholeDays(rule.before())))
                && !applied.isBefore(today.minusDays(rule.validDays()));
    }

    /** Only the date of a test is known, so a part of a day is asked for as a whole one. */
    private static long wholeDays(Duration before) {
        return before.plusDays(1).minusMillis(1).toDays();
    }

    private static boolean hasMetal(Gate gate) {
        return gate.metal() == Metal.PRESENT || gate.metal() == Metal.PRESENT_TEST_REACTED;
    }
}
