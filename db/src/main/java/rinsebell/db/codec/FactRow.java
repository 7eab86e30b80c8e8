package rinsebell.db.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.salon.StaffId;

/**
 * A fact taken apart into what stands in the columns of a table and the fields of a journal line.
 *
 * @param stream by its name
 * @param kind the name of the event's kind
 * @param version of the kind's fields
 * @param happenedMs milliseconds since 1970, UTC
 * @param recordedMs milliseconds since 1970, UTC
 * @param byStaff who said so; null for nobody
 * @param body the event's own fields, a JSON object; and with any kind, whether its instant is unsure
 */
public record FactRow(
        long seq,
        String stream,
        String kind,
        int version,
        long happenedMs,
        long recordedMs,
        @Nullable Long byStaff,
        String body) {

    /** A field beside the event's own; most facts have none. */
    private static final String UNSURE = "unsure";

    public static FactRow of(Fact fact) {
        EventKind<?> kind = EventCodec.kindOf(fact.event());
        ObjectNode body = kind.write(fact.event());
        if (fact.unsure()) {
            body.put(UNSURE, true);
        }
        return new FactRow(
                fact.seq(),
                StreamName.of(fact.stream()),
                kind.name(),
                kind.version(),
                fact.happened().toEpochMilli(),
                fact.recorded().toEpochMilli(),
                Ids.of(fact.by()),
                Json.line(body));
    }

    /** The name that events of this kind have in tables. */
    public static String kindOf(Event event) {
        return EventCodec.kindOf(event).name();
    }

    /** @throws UnreadableFact if this version of the program does not know such a fact */
    public Fact fact() {
        ObjectNode own = Json.parse(body);
        return new Fact(
                seq,
                StreamName.parse(stream),
                Instant.ofEpochMilli(happenedMs),
                Instant.ofEpochMilli(recordedMs),
                byStaff == null ? null : new StaffId(byStaff),
                EventCodec.read(kind, version, own),
                new Reading(kind, own).maybeFlag(UNSURE));
    }

    void write(ObjectNode line) {
        new Writing(line)
                .number("seq", seq)
                .text("stream", stream)
                .number("happened_ms", happenedMs)
                .number("recorded_ms", recordedMs)
                .number("by", byStaff)
                .text("kind", kind)
                .whole("v", version);
        line.set("body", Json.parse(body));
    }

    static FactRow read(Reading line) {
        return new FactRow(
                line.number("seq"),
                line.text("stream"),
                line.text("kind"),
                line.whole("v"),
                line.number("happened_ms"),
                line.number("recorded_ms"),
                line.maybeNumber("by").orElse(null),
                line.raw("body"));
    }
}
