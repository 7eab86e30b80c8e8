package rinsebell.web.board;

import rinsebell.floor.ClockTrust;
import rinsebell.floor.salon.Place;
import rinsebell.web.Codes;
import rinsebell.web.view.LookPage;

/** Tells whoever looks in by a link when chairs are free: no client, nobody of the staff, and nothing to press. */
public final class LookTelling {
    private final Moment moment;

    public LookTelling(Moment moment) {
        this.moment = moment;
    }

    public LookPage page() {
        var clock = moment.clock(moment.now());
        var trust = moment.around().clocks().trust();
        return new LookPage(
                title(),
                moment.say("look_in.as_of", clock),
                moment.say("look_in.lost", clock),
                trust == ClockTrust.AGREES ? "" : moment.say("clock." + Codes.of(trust)),
                ChairTime.all(moment).stream().map(this::row).toList(),
                moment.say("look_in.waiting", moment.floor().at(Place.BENCH).size()));
    }

    /** The chairs of which salon. */
    public String title() {
        return moment.say("look_in.chairs", moment.salon());
    }

    private LookPage.Row row(ChairTime chair) {
        var name = moment.say("look_in.chair", String.valueOf(chair.chair()));
        var free = chair.free();
        if (free == null) {
            return new LookPage.Row(name, moment.say(chair.taken() == null ? "desk.free" : "look_in.unknown"), "");
        }
        return new LookPage.Row(
                name,
                moment.say("look_in.likely", moment.clock(free.likely())),
                moment.say("look_in.latest", moment.clock(free.latest())));
    }

    /** What a calendar says of a chair whose time is known, such as "Chair 3 free, almost surely by 15:20". */
    public static String summary(Moment moment, ChairTime chair) {
        var free = chair.free();
        return free == null
                ? ""
                : moment.say("look_in.summary", String.valueOf(chair.chair()), moment.clock(free.latest()));
    }
}
