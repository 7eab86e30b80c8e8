package rinsebell.web.board;

import rinsebell.floor.basin.SafeStart;
import rinsebell.floor.salon.Place;

/** Whether there will be a basin for a bowl, in one sentence. */
public final class SafeStartTelling {
    private SafeStartTelling() {}

    /** Empty where its directions name no rinse-by, or the salon has no basins: then there is nothing to say. */
    public static String say(Moment moment, SafeStart safe) {
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
