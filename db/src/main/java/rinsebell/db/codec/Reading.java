package rinsebell.db.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One JSON object being read, field by field. A field asked for by {@code maybe...} may be absent; any other that is
 * absent or of another type is an {@link UnreadableFact} that names it.
 */
final class Reading {

    private final String path;
    private final ObjectNode object;

    /** @param path what is being read, for messages */
    Reading(String path, ObjectNode object) {
        this.path = path;
        this.object = object;
    }

    String text(String name) {
        return required(name, maybeText(name));
    }

    Optional<String> maybeText(String name) {
        return field(name, JsonNode::isTextual).map(JsonNode::textValue);
    }

    long number(String name) {
        return required(name, maybeNumber(name));
    }

    Optional<Long> maybeNumber(String name) {
        return field(name, JsonNode::canConvertToLong).map(JsonNode::longValue);
    }

    int whole(String name) {
        return required(name, maybeWhole(name));
    }

    Optional<Integer> maybeWhole(String name) {
        return field(name, JsonNode::canConvertToInt).map(JsonNode::intValue);
    }

    boolean flag(String name) {
        return required(name, field(name, JsonNode::isBoolean).map(JsonNode::booleanValue));
    }

    /** False where the field is absent. */
    boolean maybeFlag(String name) {
        return field(name, JsonNode::isBoolean).map(JsonNode::booleanValue).orElse(false);
    }

    BigDecimal decimal(String name) {
        return required(name, maybeDecimal(name));
    }

    Optional<BigDecimal> maybeDecimal(String name) {
        return parsed(name, BigDecimal::new);
    }

    <E extends Enum<E>> E constant(String name, Class<E> type) {
        return required(name, maybeConstant(name, type));
    }

    <E extends Enum<E>> Optional<E> maybeConstant(String name, Class<E> type) {
        return parsed(name, text -> Enum.valueOf(type, text));
    }

    Instant instant(String name) {
        return Instant.ofEpochMilli(number(name));
    }

    Duration duration(String name) {
        return required(name, maybeDuration(name));
    }

    Optional<Duration> maybeDuration(String name) {
        return parsed(name, Duration::parse);
    }

    LocalTime localTime(String name) {
        return required(name, parsed(name, LocalTime::parse));
    }

    Optional<LocalDate> maybeDate(String name) {
        return parsed(name, LocalDate::parse);
    }

    /** An object as its text. */
    String raw(String name) {
        return Json.line(required(name, field(name, JsonNode::isObject)));
    }

    <T> T object(String name, Function<Reading, T> fields) {
        return required(name, maybeObject(name, fields));
    }

    <T> Optional<T> maybeObject(String name, Function<Reading, T> fields) {
        return field(name, JsonNode::isObject).map(node -> fields.apply(into(name, node)));
    }

    <T> List<T> objects(String name, Function<Reading, T> fields) {
        return elements(name, JsonNode::isObject, node -> fields.apply(into(name, node)));
    }

    List<Long> numbers(String name) {
        return elements(name, JsonNode::canConvertToLong, JsonNode::longValue);
    }

    List<Integer> wholes(String name) {
        return elements(name, JsonNode::canConvertToInt, JsonNode::intValue);
    }

    List<BigDecimal> decimals(String name) {
        return elements(name, JsonNode::isTextual, node -> new BigDecimal(node.textValue()));
    }

    /** None where the field is absent. */
    <E extends Enum<E>> List<E> maybeConstants(String name, Class<E> type) {
        return object.has(name)
                ? elements(
                        name,
                        JsonNode::isTextual,
                        node -> parse(name, node.textValue(), text -> Enum.valueOf(type, text)))
                : List.of();
    }

    <K extends Enum<K>, T> Map<K, T> byConstant(String name, Class<K> type, Function<Reading, T> fields) {
        return object(name, entries -> {
            Map<K, T> map = new EnumMap<>(type);
            entries.object
                    .fieldNames()
                    .forEachRemaining(key -> map.put(
                            entries.parse(key, key, text -> Enum.valueOf(type, text)), entries.object(key, fields)));
            return map;
        });
    }

    private Reading into(String name, JsonNode node) {
        return new Reading(path + "." + name, (ObjectNode) node);
    }

    private Optional<JsonNode> field(String name, Predicate<JsonNode> type) {
        JsonNode node = object.get(name);
        if (node != null && !type.test(node)) {
            throw unreadable(name, "is " + node);
        }
        return Optional.ofNullable(node);
    }

    private <T> List<T> elements(String name, Predicate<JsonNode> type, Function<JsonNode, T> read) {
        List<T> elements = new ArrayList<>();
        for (JsonNode node : required(name, field(name, JsonNode::isArray))) {
            if (!type.test(node)) {
                throw unreadable(name, "holds " + node);
            }
            elements.add(read.apply(node));
        }
        return elements;
    }

    private <T> Optional<T> parsed(String name, Function<String, T> parser) {
        return maybeText(name).map(text -> parse(name, text, parser));
    }

    private <T> T parse(String name, String text, Function<String, T> parser) {
        try {
            return parser.apply(text);
        } catch (RuntimeException e) {
            throw unreadable(name, "is \"" + text + "\"");
        }
    }

    private <T> T required(String name, Optional<T> value) {
        return value.orElseThrow(() -> unreadable(name, "is missing"));
    }

    private UnreadableFact unreadable(String name, String what) {
        return new UnreadableFact(path + "." + name + " " + what);
    }
}
