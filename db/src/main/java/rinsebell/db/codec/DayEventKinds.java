package rinsebell.db.codec;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent.BasinClosed;
import rinsebell.floor.bowl.DayEvent.BasinOpened;
import rinsebell.floor.bowl.DayEvent.BreakBegan;
import rinsebell.floor.bowl.DayEvent.BreakEnded;
import rinsebell.floor.bowl.DayEvent.CaughtUp;
import rinsebell.floor.bowl.DayEvent.ClockShifted;
import rinsebell.floor.bowl.DayEvent.DayEnded;
import rinsebell.floor.bowl.DayEvent.Divided;
import rinsebell.floor.bowl.DayEvent.LeftTold;
import rinsebell.floor.bowl.DayEvent.Mixed;
import rinsebell.floor.bowl.DayEvent.Outage;
import rinsebell.floor.bowl.DayEvent.RecipeFilled;
import rinsebell.floor.bowl.DayEvent.ThrownAway;
import rinsebell.floor.bowl.DayEvent.TimeMissed;
import rinsebell.floor.bowl.DayEvent.TurnPinned;
import rinsebell.floor.bowl.DayEvent.TurnUnpinned;
import rinsebell.floor.bowl.DayEvent.TurnsAnnounced;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.VisitId;

/** What the salon's day holds besides the heads. */
final class DayEventKinds {

    static final List<EventKind<?>> ALL = List.of(
            EventKind.first(
                    "bowl-mixed",
                    Mixed.class,
                    (event, out) -> out.objects("portions", event.portions(), PortionJson::write)
                            .constant("reason", event.reason())
                            .number("for_visit", Ids.of(event.forVisit())),
                    in -> new Mixed(
                            in.objects("portions", PortionJson::read),
                            in.constant("reason", BowlReason.class),
                            Ids.visit(in, "for_visit"))),
            EventKind.first(
                    "recipe-filled",
                    RecipeFilled.class,
                    (event, out) -> out.number("bowl", event.bowl().value())
                            .objects("portions", event.portions(), PortionJson::write),
                    in -> new RecipeFilled(bowl(in), in.objects("portions", PortionJson::read))),
            EventKind.first(
                    "bowl-divided",
                    Divided.class,
                    (event, out) -> out.number("bowl", event.bowl().value())
                            .constant("reason", event.reason())
                            .number("for_visit", Ids.of(event.forVisit())),
                    in -> new Divided(bowl(in), in.constant("reason", BowlReason.class), Ids.visit(in, "for_visit"))),
            EventKind.first(
                    "bowl-thrown-away",
                    ThrownAway.class,
                    (event, out) -> out.number("bowl", event.bowl().value())
                            .object("left", event.left(), DayEventKinds::writeLeft),
                    in -> new ThrownAway(
                            bowl(in),
                            in.maybeObject("left", DayEventKinds::readLeft).orElse(null))),
            EventKind.first(
                    "left-told",
                    LeftTold.class,
                    (event, out) -> out.number("bowl", event.bowl().value())
                            .object("left", event.left(), DayEventKinds::writeLeft),
                    in -> new LeftTold(bowl(in), in.object("left", DayEventKinds::readLeft))),
            EventKind.first(
                    "break-began",
                    BreakBegan.class,
                    (event, out) -> out.number("staff", event.staff().value()),
                    in -> new BreakBegan(new StaffId(in.number("staff")))),
            EventKind.first(
                    "break-ended",
                    BreakEnded.class,
                    (event, out) -> out.number("staff", event.staff().value()),
                    in -> new BreakEnded(new StaffId(in.number("staff")))),
            EventKind.first(
                    "basin-closed",
                    BasinClosed.class,
                    (event, out) -> out.whole("basin", event.basin()),
                    in -> new BasinClosed(in.whole("basin"))),
            EventKind.first(
                    "basin-opened",
                    BasinOpened.class,
                    (event, out) -> out.whole("basin", event.basin()),
                    in -> new BasinOpened(in.whole("basin"))),
            EventKind.first(
                    "turn-pinned",
                    TurnPinned.class,
                    (event, out) -> out.number("visit", event.visit().value())
                            .whole("basin", event.basin())
                            .number("before", Ids.of(event.before())),
                    in -> new TurnPinned(
                            new VisitId(in.number("visit")),
                            in.maybeWhole("basin").orElse(null),
                            Ids.visit(in, "before"))),
            EventKind.first(
                    "turn-unpinned",
                    TurnUnpinned.class,
                    (event, out) -> out.number("visit", event.visit().value()),
                    in -> new TurnUnpinned(new VisitId(in.number("visit")))),
            EventKind.first(
                    "turns-announced",
                    TurnsAnnounced.class,
                    (event, out) -> out.number("floor", event.floor())
                            .objects("turns", new TreeMap<>(event.turns()).entrySet(), DayEventKinds::writeTurn),
                    in -> new TurnsAnnounced(
                            in.number("floor"),
                            in.objects("turns", DayEventKinds::readTurn).stream()
                                    .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)))),
            EventKind.first(
                    "outage",
                    Outage.class,
                    (event, out) -> out.instant("from_ms", event.from()).instant("until_ms", event.until()),
                    in -> new Outage(in.instant("from_ms"), in.instant("until_ms"))),
            EventKind.bare("caught-up", CaughtUp.class, CaughtUp::new),
            EventKind.first(
                    "clock-shifted",
                    ClockShifted.class,
                    (event, out) -> out.duration("by", event.by()),
                    in -> new ClockShifted(in.duration("by"))),
            EventKind.first(
                    "time-missed",
                    TimeMissed.class,
                    (event, out) -> out.duration("by", event.by()),
                    in -> new TimeMissed(in.duration("by"))),
            EventKind.bare("day-ended", DayEnded.class, DayEnded::new));

    private DayEventKinds() {}

    private static BowlId bowl(Reading in) {
        return new BowlId(in.number("bowl"));
    }

    private static void writeTurn(Map.Entry<Long, Announced> turn, Writing out) {
        out.number("on", turn.getKey())
                .whole("basin", turn.getValue().basin())
                .instant("water_ms", turn.getValue().water());
    }

    private static Map.Entry<Long, Announced> readTurn(Reading in) {
        return Map.entry(in.number("on"), new Announced(in.whole("basin"), in.instant("water_ms")));
    }

    private static void writeLeft(Left left, Writing out) {
        if (left instanceof Left.Weighed weighed) {
            out.decimal("grams", weighed.grams().amount());
        } else if (left instanceof Left.Estimated estimated) {
            out.constant("quarters", estimated.quarters());
        }
    }

    private static Left readLeft(Reading in) {
        return in.maybeDecimal("grams")
                .<Left>map(grams -> new Left.Weighed(new Grams(grams)))
                .orElseGet(() -> new Left.Estimated(in.constant("quarters", Left.Quarters.class)));
    }
}
