package rinsebell.floor.command;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Asked;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Stage;

/** The bell that a press names, with all that is one round with it. */
final class AskedBell {
    /** Nobody has read and answered what came up more shortly before: the time of a choice reaction (from memory). */
    private static final Duration REACTION = Duration.ofMillis(500);

    private AskedBell() {}

    /**
     * Up to when whoever pressed knew of the bell. A finger that was on its way when the bell came to a further stage meant
     * the one before.
     */
    static Instant seenAt(BellKey key, Floor floor, Asked asked) {
        var seen = asked.seenAt();
        return bell(key, floor).flatMap(bell -> beforeFresh(bell, seen)).orElse(seen);
    }

    private static Optional<Instant> beforeFresh(Bell bell, Instant seen) {
        return bell.at(seen)
                .map(Stage::from)
                .filter(from -> from.plus(REACTION).isAfter(seen))
                .map(from -> from.minusMillis(1))
                .filter(before -> bell.at(before).filter(Stage::rings).isPresent());
    }

    /** The bell itself first, then whatever rings with it; none when it is in no stage. */
    static List<Bell> of(BellKey key, Floor floor, Instant now) {
        var asked = bell(key, floor).filter(one -> one.at(now).isPresent());
        var others = floor.bells().stream()
                .filter(one -> asked.filter(bell -> one != bell && one.round().equals(bell.round()))
                        .isPresent())
                .filter(one -> one.isRinging(now));
        return java.util.stream.Stream.concat(asked.stream(), others).toList();
    }

    /** A press that says that it is older than the bell it answers to is not: it was pressed when the bell had begun. */
    static Optional<Reason> tooEarly(BellKey key, Floor floor, Asked asked) {
        return bell(key, floor)
                .map(one -> one.stages().get(0).from())
                .filter(from -> asked.seenAt().isBefore(from) && !from.isAfter(asked.now()))
                .map(from -> Reason.of(ReasonCode.TOO_EARLY, from));
    }

    private static Optional<Bell> bell(BellKey key, Floor floor) {
        return floor.bells().stream().filter(one -> one.key().equals(key)).findFirst();
    }

    /** A bowl may have been meant for somebody who never came: that is the day's then. */
    static Stream stream(Bell bell, Floor floor, Instant now) {
        var visit = bell.visit();
        return visit == null || floor.visit(visit).isEmpty()
                ? Stream.day(floor.salon().dayOf(now))
                : Stream.visit(visit);
    }
}
