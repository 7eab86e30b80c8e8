package rinsebell.app.trail;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.BiFunction;
import rinsebell.app.door.Caller;
import rinsebell.app.lead.Days;
import rinsebell.app.page.LiveFloor;
import rinsebell.db.Keyring;
import rinsebell.db.Pressed;
import rinsebell.db.Trail;
import rinsebell.web.board.Moment;

/** What was recorded on a day, on the floor and beside it, whatever day it tells of. */
public final class TrailDays {
    private final LiveFloor live;
    private final Days days;
    private final BiFunction<Instant, Instant, List<Pressed>> pressed;
    private final Trail trail;
    private final Keyring keyring;

    /** @param pressed what was recorded in a stretch of time, whose end is not counted in */
    public TrailDays(
            LiveFloor live,
            Days days,
            BiFunction<Instant, Instant, List<Pressed>> pressed,
            Trail trail,
            Keyring keyring) {
        this.live = live;
        this.days = days;
        this.pressed = pressed;
        this.trail = trail;
        this.keyring = keyring;
    }

    /**
     * One day.
     *
     * @param moment whose floor and texts know it
     * @param pressed by number
     * @param steps in the order in which they were kept
     */
    public record Told(LocalDate day, Moment moment, List<Pressed> pressed, List<Trail.Step> steps) {}

    /**
     * Tells of a day.
     *
     * @throws rinsebell.db.DatabaseAway if that can't be told just now
     */
    public Told of(LocalDate day) {
        var now = live.moment();
        var salon = now.floor().salon();
        var from = salon.beginOf(day);
        var until = salon.beginOf(day.plusDays(1));
        var told = days.of(day);
        return new Told(
                day, now.on(told.floor(), told.texts()), pressed.apply(from, until), trail.between(from, until));
    }

    /** What a device is called, by the code that stands beside a press; the code where nobody knows. */
    String deviceName(String code) {
        return Caller.noted(code)
                .map(number ->
                        keyring.name(number).orElseGet(() -> live.moment().say("trail.own")))
                .orElse(code);
    }
}
