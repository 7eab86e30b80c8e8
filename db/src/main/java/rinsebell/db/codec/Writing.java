package rinsebell.db.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** One JSON object being written, field by field. What is null is left out. */
final class Writing {

    private final ObjectNode object;

    Writing(ObjectNode object) {
        this.object = object;
    }

    Writing text(String name, @Nullable String value) {
        if (value != null) {
            object.put(name, value);
        }
        return this;
    }

    Writing number(String name, @Nullable Long value) {
        if (value != null) {
            object.put(name, value);
        }
        return this;
    }

    Writing whole(String name, @Nullable Integer value) {
        return number(name, value == null ? null : Long.valueOf(value));
    }

    Writing flag(String name, boolean value) {
        object.put(name, value);
        return this;
    }

    /** A decimal stands as text, so that no reader makes a binary fraction of it. */
    Writing decimal(String name, @Nullable BigDecimal value) {
        return text(name, value == null ? null : value.toPlainString());
    }

    Writing constant(String name, @Nullable Enum<?> value) {
        return text(name, value == null ? null : value.name());
    }

    /** Milliseconds since 1970, UTC. */
    Writing instant(String name, @Nullable Instant value) {
        return number(name, value == null ? null : Long.valueOf(value.toEpochMilli()));
    }

    /** ISO 8601, such as PT20M. */
    Writing duration(String name, @Nullable Duration value) {
        return text(name, value == null ? null : value.toString());
    }

    Writing date(String name, @Nullable LocalDate value) {
        return text(name, value == null ? null : value.toString());
    }

    <T> Writing object(String name, @Nullable T value, BiConsumer<T, Writing> fields) {
        if (value != null) {
            fields.accept(value, new Writing(object.putObject(name)));
        }
        return this;
    }

    <T> Writing objects(String name, Collection<T> values, BiConsumer<T, Writing> fields) {
        var array = object.putArray(name);
        values.forEach(value -> fields.accept(value, new Writing(array.addObject())));
        return this;
    }

    /** Sorted, since a set comes in any order. */
    Writing numbers(String name, Collection<Long> values) {
        var array = object.putArray(name);
        values.stream().sorted().forEach(array::add);
        return this;
    }

    /** In their order. */
    Writing wholes(String name, Collection<Integer> values) {
        var array = object.putArray(name);
        values.forEach(array::add);
        return this;
    }

    /** Sorted, since a set comes in any order. */
    Writing decimals(String name, Collection<BigDecimal> values) {
        var array = object.putArray(name);
        values.stream().sorted().map(BigDecimal::toPlainString).forEach(array::add);
        return this;
    }

    /** In their order. */
    Writing inOrder(String name, Collection<? extends Enum<?>> values) {
        var array = object.putArray(name);
        values.forEach(value -> array.add(value.name()));
        return this;
    }

    /** Sorted, since a set comes in any order; none at all is left out. */
    Writing constants(String name, Collection<? extends Enum<?>> values) {
        if (!values.isEmpty()) {
            var array = object.putArray(name);
            values.stream().map(Enum::name).sorted().forEach(array::add);
        }
        return this;
    }

    <K extends Enum<K>, T> Writing byConstant(String name, Map<K, T> values, BiConsumer<T, Writing> fields) {
        var entries = new Writing(object.putObject(name));
        new TreeMap<>(values).forEach((key, value) -> entries.object(key.name(), value, fields));
        return this;
    }
}
