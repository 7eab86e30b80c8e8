package rinsebell.floor.testing;

import java.time.LocalDate;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.Scalp;
import rinsebell.floor.visit.Gate.SkinTest;
import rinsebell.floor.visit.Gate.YesNo;

/** Answers at the gate. */
public final class Gates {
    /** Nothing stands in the way of anything. */
    public static final Gate FINE =
            new Gate(testedOn(Saturday.DATE.minusDays(2)), Scalp.FINE, YesNo.NO, Metal.NONE, YesNo.NO);

    private Gates() {}

    /** A skin test without reaction. */
    public static SkinTest testedOn(LocalDate date) {
        return new SkinTest(SkinTest.Result.NO_REACTION, date);
    }

    public static Gate fineBut(SkinTest test) {
        return new Gate(test, Scalp.FINE, YesNo.NO, Metal.NONE, YesNo.NO);
    }

    public static Gate fineBut(Scalp scalp) {
        return FINE.over(new Gate(null, scalp, null, null, null));
    }

    public static Gate fineBut(Metal metal) {
        return FINE.over(new Gate(null, null, null, metal, null));
    }

    public static Gate reactedEarlier() {
        return FINE.over(new Gate(null, null, YesNo.YES, null, null));
    }

    public static Gate under16() {
        return FINE.over(new Gate(null, null, null, null, YesNo.YES));
    }
}
