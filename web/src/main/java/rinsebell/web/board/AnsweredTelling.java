package rinsebell.web.board;

import java.util.Comparator;
import java.util.Optional;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Seen;
import rinsebell.floor.bell.Shelved;

/** Tells what people said to a bell: that they have seen it, or have put it off, and when it rings again. */
record AnsweredTelling(Moment moment) {
    private static final String JOINT = " · ";

    /** Such as "put off until 14:31 · Odile · hands full"; empty for a bell to which nobody has said anything. */
    String aside(Bell bell) {
        return bell.onShelf(moment.now())
                .map(this::shelved)
                .or(() -> Optional.of(bell)
                        .filter(one -> one.isSeen(moment.now()))
                        .flatMap(this::seen))
                .orElse("");
    }

    private String shelved(Shelved shelf) {
        return Moment.joined(
                JOINT,
                moment.say("bell.shelved", moment.clock(shelf.until())),
                moment.name(shelf.by()),
                moment.say(shelf.what().why()));
    }

    private Optional<String> seen(Bell bell) {
        return bell.seen().stream()
                .map(Seen::at)
                .filter(at -> !at.isAfter(moment.now()))
                .max(Comparator.naturalOrder())
                .map(at -> Moment.joined(JOINT, moment.say("bell.heard", moment.clock(at)), again(bell)));
    }

    private String again(Bell bell) {
        return bell.nextAfter(moment.now())
                .map(next -> moment.say("bell.again", moment.clock(next)))
                .orElse("");
    }
}
