package rinsebell.floor.bell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.AlarmState.Happening;
import rinsebell.floor.salon.Policy;

/**
 * Tells what a bell does over time if nobody does anything more: from what will befall it (its stages), what people did (saw
 * it, put it off) and the house's delays, by the table of {@link AlarmState}.
 */
final class RingPlan {
    private final Bell bell;
    private final Policy.Ringing house;
    private final Callers callers;
    private final List<Ring> rings = new ArrayList<>();
    private final Map<Audience, List<Reach>> reaches = new EnumMap<>(Audience.class);

    private AlarmState state = AlarmState.NORMAL;
    private @Nullable Stage stage;
    /** How far the call has widened since it last began to ring. */
    private int width;

    /** When it goes on by itself: wider, or ringing again; null when it does not. */
    private @Nullable Instant next;

    private RingPlan(Bell bell, Policy.Ringing house, Callers callers) {
        this.bell = bell;
        this.house = house;
        this.callers = callers;
    }

    static List<Ring> of(Bell bell, Policy.Ringing house, Callers callers) {
        var plan = new RingPlan(bell, house, callers);
        plan.told().forEach(plan::take);
        plan.goesOnUntil(Instant.MAX);
        return plan.rings;
    }

    /** One thing that befalls it, and what that does. */
    private record Told(Instant at, int order, Runnable does) {}

    /** In time; of two at once a new stage comes first, since what was seen then was seen in it. */
    private Stream<Told> told() {
        var stages = bell.stages().stream().map(one -> new Told(one.from(), 0, () -> begins(one)));
        var seen = bell.seen().stream().map(one -> new Told(one.at(), 1, () -> isSeen(one)));
        var off = bell.shelved().stream().map(one -> new Told(one.at(), 2, () -> isShelved(one)));
        return Stream.of(stages, seen, off)
                .flatMap(all -> all)
                .sorted(Comparator.comparing(Told::at).thenComparingInt(Told::order));
    }

    private void take(Told told) {
        goesOnUntil(told.at());
        told.does().run();
    }

    /** What it does by itself before that instant. */
    private void goesOnUntil(Instant end) {
        while (next != null && next.isBefore(end)) {
            var at = next;
            switch (state) {
                case UNACKNOWLEDGED -> widens(at);
                case ACKNOWLEDGED -> happens(Happening.AGAIN, at);
                case SHELVED -> happens(Happening.SHELF_OVER, at);
                default -> next = null;
            }
        }
    }

    /** No call gets narrower because the bell comes to a further stage meanwhile. */
    private void begins(Stage begun) {
        stage = begun;
        if (!begun.rings()) {
            write(begun.from());
        } else if (state.isRinging()) {
            rings(begun.from());
        } else {
            happens(Happening.RAISED, begun.from());
        }
    }

    /** What was seen of an earlier stage, or for fewer reasons, is not this. */
    private void isSeen(Seen seen) {
        if (stage != null && stage.rings() && seen.covers(stage) && bell.isSeenWhole(stage)) {
            happens(Happening.SEEN, seen.at());
            next = seen.what().ends() ? null : seen.at().plus(stage.priority().again(house));
        }
    }

    private void isShelved(Shelved off) {
        if (stage != null && stage.priority() != Priority.HIGH) {
            happens(Happening.SHELVED, off.at());
            next = state == AlarmState.SHELVED ? off.until() : next;
        }
    }

    private void happens(Happening happening, Instant at) {
        var before = state;
        state = state.after(happening);
        if (state.isRinging() && !before.isRinging()) {
            width = 0;
            rings(at);
        } else {
            next = null;
            write(at);
        }
    }

    private void widens(Instant at) {
        width++;
        rings(at);
    }

    private void rings(Instant at) {
        var delay = now().priority().wider(house);
        next = delay == null || width >= reaches().size() - 1 ? null : at.plus(delay);
        write(at);
    }

    private List<Reach> reaches() {
        return reaches.computeIfAbsent(now().audience(), audience -> callers.of(bell, audience));
    }

    private Reach reach() {
        return reaches().get(Math.min(width, reaches().size() - 1));
    }

    private Stage now() {
        return Objects.requireNonNull(stage, "nothing rings before its first stage");
    }

    private void write(Instant at) {
        var ring = new Ring(at, state, now(), state.isRinging() ? reach() : Reach.NOBODY);
        if (!rings.isEmpty() && rings.get(rings.size() - 1).from().equals(at)) {
            rings.remove(rings.size() - 1);
        }
        if (rings.isEmpty() || !rings.get(rings.size() - 1).isAs(ring)) {
            rings.add(ring);
        }
    }
}
