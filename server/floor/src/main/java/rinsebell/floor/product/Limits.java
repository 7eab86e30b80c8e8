package rinsebell.floor.product;

import java.util.EnumMap;
import java.util.Map;

/**
 * Where a mixture may go and what may lie over it or warm it. A cover or heat that is not named is not allowed; open is
 * allowed unless it is named otherwise.
 *
 * @param zone ON_SCALP when it may touch the scalp, OFF_SCALP when it must not
 * @param covers each cover by itself
 * @param heats each heat by itself
 */
public record Limits(Zone zone, Map<Cover, Allowance> covers, Map<Heat, Allowance> heats) {
    public Limits {
        covers = Map.copyOf(covers);
        heats = Map.copyOf(heats);
    }

    /** Everything allowed: for additives and developers, whose partner's directions count. */
    public static final Limits FREE = new Limits(
            Zone.ON_SCALP,
            Map.of(
                    Cover.OPEN,
                    Allowance.YES,
                    Cover.FOIL,
                    Allowance.YES,
                    Cover.FILM,
                    Allowance.YES,
                    Cover.CAP,
                    Allowance.YES),
            Map.of(Heat.GENTLE_STEAM, Allowance.YES, Heat.WARM_AIR, Allowance.YES, Heat.DRYER, Allowance.YES));

    public Allowance cover(Cover cover) {
        return covers.getOrDefault(cover, cover == Cover.OPEN ? Allowance.YES : Allowance.NO);
    }

    public Allowance heat(Heat heat) {
        return heats.getOrDefault(heat, Allowance.NO);
    }

    /** The stricter of two, for a mixture of both. */
    public Limits and(Limits other) {
        var strictCovers = new EnumMap<Cover, Allowance>(Cover.class);
        for (var cover : Cover.values()) {
            strictCovers.put(cover, cover(cover).and(other.cover(cover)));
        }
        var strictHeats = new EnumMap<Heat, Allowance>(Heat.class);
        for (var heat : Heat.values()) {
            strictHeats.put(heat, heat(heat).and(other.heat(heat)));
        }
        var offScalp = zone == Zone.OFF_SCALP || other.zone == Zone.OFF_SCALP;
        return new Limits(offScalp ? Zone.OFF_SCALP : Zone.ON_SCALP, strictCovers, strictHeats);
    }
}
