package rinsebell.db.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.floor.Event;

/** Events to JSON and back, each by its kind. */
final class EventCodec {

    static final List<EventKind<?>> KINDS = Stream.of(
                    SalonEventKinds.ALL,
                    DayEventKinds.ALL,
                    StayEventKinds.ALL,
                    WorkEventKinds.ALL,
                    LookEventKinds.ALL,
                    NoteEventKinds.ALL)
            .<EventKind<?>>flatMap(List::stream)
            .toList();

    private static final Map<Class<?>, EventKind<?>> BY_TYPE =
            KINDS.stream().collect(Collectors.toUnmodifiableMap(EventKind::type, Function.identity()));

    private static final Map<String, EventKind<?>> BY_NAME =
            KINDS.stream().collect(Collectors.toUnmodifiableMap(EventCodec::versioned, Function.identity()));

    private EventCodec() {}

    /** How an event of this class is written now. */
    static EventKind<?> kindOf(Event event) {
        EventKind<?> kind = BY_TYPE.get(event.getClass());
        if (kind == null) {
            throw new IllegalStateException("no kind is named for " + event.getClass());
        }
        return kind;
    }

    /** @throws UnreadableFact if the kind or its version is not known, or the body is not one of it */
    static Event read(String name, int version, ObjectNode body) {
        EventKind<?> kind = BY_NAME.get(versioned(name, version));
        if (kind == null) {
            throw new UnreadableFact("the kind \"" + name + "\", version " + version
                    + ", is not known: was it written by a later version of the program?");
        }
        return kind.read(body);
    }

    private static String versioned(EventKind<?> kind) {
        return versioned(kind.name(), kind.version());
    }

    private static String versioned(String name, int version) {
        return name + " " + version;
    }
}
