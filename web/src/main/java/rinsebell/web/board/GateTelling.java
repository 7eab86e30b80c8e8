package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.rule.GateRules;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.SkinTest;
import rinsebell.floor.visit.Gate.YesNo;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.Answer;

/** The answers at the gate that stand in the way of something, each in one short form wherever it is said. */
public final class GateTelling {
    private final Moment moment;
    private final Gate gate;

    GateTelling(Moment moment, Visit visit) {
        this(moment, visit.gate());
    }

    /** Of answers that belong to no visit yet. */
    public GateTelling(Moment moment, Gate gate) {
        this.moment = moment;
        this.gate = gate;
    }

    /** All of them, what can hurt most first; none where every answer is fine. */
    List<String> all() {
        return codes().stream().map(this::brief).toList();
    }

    /** The same with where each comes from, as an answer shows it. */
    public List<Answer.Reason> reasons() {
        return codes().stream()
                .map(code -> ReasonTelling.told(brief(code), code.basis().name(), moment))
                .toList();
    }

    private List<ReasonCode> codes() {
        var codes = new ArrayList<ReasonCode>();
        add(codes, isUnsound(), ReasonCode.SCALP_NOT_SOUND);
        add(codes, hasReacted(), ReasonCode.DYE_REACTION);
        add(codes, gate.under16() == YesNo.YES, ReasonCode.UNDER_16);
        add(codes, isWithoutTest(), ReasonCode.NO_SKIN_TEST);
        add(
                codes,
                gate.metal() == Metal.PRESENT || gate.metal() == Metal.PRESENT_TEST_REACTED,
                ReasonCode.METAL_ON_HAIR);
        add(codes, !gate.isComplete(), ReasonCode.GATE_OPEN);
        return codes;
    }

    private static void add(List<ReasonCode> codes, boolean holds, ReasonCode code) {
        if (holds) {
            codes.add(code);
        }
    }

    private boolean isUnsound() {
        return gate.scalp() != null && gate.scalp() != Gate.Scalp.FINE;
    }

    private boolean hasReacted() {
        return gate.earlierReaction() == YesNo.YES || hasTest(SkinTest.Result.REACTED);
    }

    private boolean isWithoutTest() {
        var test = gate.skinTest();
        return test != null
                && !hasTest(SkinTest.Result.REACTED)
                && !GateRules.isValid(test, moment.now(), moment.floor().salon());
    }

    private boolean hasTest(SkinTest.Result result) {
        return Optional.ofNullable(gate.skinTest())
                .filter(test -> test.result() == result)
                .isPresent();
    }

    /** Such as "Earlier reaction to hair dye: take it off", for what is on although an answer refuses it. */
    String takeOff(Reason reason) {
        return moment.say("gate.take_off", brief(reason.code()));
    }

    private String brief(ReasonCode code) {
        return switch (code) {
            case SCALP_NOT_SOUND -> moment.say("gate.scalp", scalp());
            case DYE_REACTION ->
                moment.say(gate.earlierReaction() == YesNo.YES ? "gate.reaction" : "gate.test_reacted");
            case NO_SKIN_TEST ->
                moment.say(hasTest(SkinTest.Result.NO_REACTION) ? "gate.test_not_counting" : "gate.no_test");
            case UNDER_16 -> moment.say("gate.under_16");
            case METAL_ON_HAIR -> moment.say("gate.metal");
            default -> moment.say("gate.open");
        };
    }

    private String scalp() {
        return Stream.ofNullable(gate.scalp()).map(moment::say).findFirst().orElse("");
    }
}
