package rinsebell.db.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import rinsebell.floor.Event;

/**
 * How one kind of event is written and read.
 *
 * @param name stands in journals and tables for good
 * @param version of the fields that are written
 * @param type the event's class
 */
record EventKind<E extends Event>(
        String name, int version, Class<E> type, BiConsumer<E, Writing> writer, Function<Reading, E> reader) {

    /** A kind in its first version. */
    static <E extends Event> EventKind<E> first(
            String name, Class<E> type, BiConsumer<E, Writing> writer, Function<Reading, E> reader) {
        return new EventKind<>(name, 1, type, writer, reader);
    }

    /** A kind in its first version that has nothing to say but its name. */
    static <E extends Event> EventKind<E> bare(String name, Class<E> type, Supplier<E> event) {
        return first(name, type, (same, out) -> {}, in -> event.get());
    }

    ObjectNode write(Event event) {
        ObjectNode body = Json.object();
        writer.accept(type.cast(event), new Writing(body));
        return body;
    }

    E read(ObjectNode body) {
        try {
            return reader.apply(new Reading(name, body));
        } catch (IllegalArgumentException e) {
            throw new UnreadableFact(name + " breaks a rule: " + e.getMessage(), e);
        }
    }
}
