package rinsebell.web.board;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.basin.SafeStart;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.VisitId;

/** Whether there will be a basin for a bowl, in one sentence. */
public final class SafeStartTelling {
    private SafeStartTelling() {}

    /** Of a bowl that is not mixed yet; {@code whom} is null for nobody yet. */
    public static String ofMixing(Moment moment, @Nullable VisitId whom, List<Portion> portions) {
        return say(moment, SafeStart.ofMixing(moment.floor(), whom, portions, moment.now()));
    }

    /** Empty where its directions name no rinse-by, or the salon has no basins: then there is nothing to say. */
    static String say(Moment moment, SafeStart safe) {
        if (moment.floor().salon().rooms().basins() == 0) {
            return "";
        }
        return safe.turn()
                .map(turn -> {
                    var basin = new Place.Basin(turn.basin()).letter();
                    var water = moment.clock(turn.water());
                    if (safe.isNow()) {
                        return moment.say("safe.now", basin, water);
                    }
                    return safe.start()
                            .map(start -> moment.say("safe.hold", moment.clock(start), basin, water))
                            .orElseGet(() -> moment.say(
                                    "safe.never",
                                    SafeStart.HORIZON.toHours(),
                                    moment.clock(turn.job().latest())));
                })
                .orElseGet(() ->
                        moment.floor().outlook(moment.now()).station().basins().isEmpty()
                                ? moment.say("safe.no_basin")
                                : "");
    }
}
