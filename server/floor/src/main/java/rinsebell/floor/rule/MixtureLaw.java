package rinsebell.floor.rule;

import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.mix.Composition;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Percent;

/**
 * What the law says of a mixture that is ready for use. Source: Regulation (EC) No 1223/2009, Annex III, entry 12(a)
 * (hydrogen peroxide at most 12 %) and entry 4 (ammonia at most 6 %, named on the label above 2 %).
 */
public final class MixtureLaw {
    /** Hydrogen peroxide, ready for use, at most; Annex III, 12(a). */
    public static final Percent MOST_PEROXIDE = Percent.of("12");

    /** Ammonia as NH3, ready for use, at most; Annex III, 4. */
    public static final Percent MOST_AMMONIA = Percent.of("6");

    /** Above this the label says "Contains ammonia"; Annex III, 4. */
    public static final Percent AMMONIA_NAMED_ABOVE = Percent.of("2");

    private MixtureLaw() {}

    /** A strength that is not known counts as none here, so what is refused is surely over the limit. */
    static List<Reason> judge(Composition mixture) {
        var found = new ArrayList<Reason>();
        var peroxide = mixture.peroxideAtLeast();
        if (isOver(peroxide, MOST_PEROXIDE)) {
            found.add(Reason.of(ReasonCode.PEROXIDE_OVER_LAW, MOST_PEROXIDE));
        } else if (peroxide.signum() > 0) {
            found.add(Reason.of(ReasonCode.CONTAINS_PEROXIDE));
        }
        var ammonia = mixture.ammoniaAtLeast();
        if (isOver(ammonia, MOST_AMMONIA)) {
            found.add(Reason.of(ReasonCode.AMMONIA_OVER_LAW, MOST_AMMONIA));
        } else if (isOver(ammonia, AMMONIA_NAMED_ABOVE)) {
            found.add(Reason.of(ReasonCode.CONTAINS_AMMONIA, AMMONIA_NAMED_ABOVE));
        }
        return found;
    }

    private static boolean isOver(Fraction share, Percent limit) {
        return share.compareTo(Fraction.of(limit.value())) > 0;
    }
}
