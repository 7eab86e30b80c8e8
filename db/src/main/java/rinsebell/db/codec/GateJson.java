package rinsebell.db.codec;

import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.Scalp;
import rinsebell.floor.visit.Gate.SkinTest;
import rinsebell.floor.visit.Gate.YesNo;

/** Answers to the questions that are asked before anything goes on; an open one is left out. */
final class GateJson {

    private GateJson() {}

    static void write(Gate gate, Writing out) {
        out.object("skin_test", gate.skinTest(), GateJson::writeSkinTest)
                .constant("scalp", gate.scalp())
                .constant("earlier_reaction", gate.earlierReaction())
                .constant("metal", gate.metal())
                .constant("under_16", gate.under16());
    }

    static Gate read(Reading in) {
        return new Gate(
                in.maybeObject("skin_test", GateJson::readSkinTest).orElse(null),
                in.maybeConstant("scalp", Scalp.class).orElse(null),
                in.maybeConstant("earlier_reaction", YesNo.class).orElse(null),
                in.maybeConstant("metal", Metal.class).orElse(null),
                in.maybeConstant("under_16", YesNo.class).orElse(null));
    }

    private static void writeSkinTest(SkinTest test, Writing out) {
        out.constant("result", test.result()).date("applied", test.applied());
    }

    private static SkinTest readSkinTest(Reading in) {
        return new SkinTest(
                in.constant("result", SkinTest.Result.class),
                in.maybeDate("applied").orElse(null));
    }
}
