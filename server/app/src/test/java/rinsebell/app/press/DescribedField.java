package rinsebell.app.press;

import io.swagger.v3.oas.models.media.Schema;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One field of a press, as the API's description has it.
 *
 * @param name as a form has it: nested names are joined by dots
 * @param required whether a press without it is wrong
 */
record DescribedField(String name, Shape shape, boolean required) {

    enum Shape {
        NUMBER,
        /** A number that may lie below zero, as far as one likes. */
        SIGNED,
        CHOICE,
        YES_NO,
        /** Anything a person writes. */
        TEXT,
        /** Text that must mean something: a time, a date, a place. */
        WRITTEN,
        LIST
    }

    /** A code for what is described by "any code of a kind". */
    private static final Map<String, String> A_CODE = Map.of(
            "covers", "foil", "heats", "gentle-steam", "pairings", "permanent-colour", "longestOn", "powder-lightener");

    private static final List<String> WRITTEN = List.of("at", "zone", "skinTestOn", "place", "basin", "decision", "on");

    static Stream<DescribedField> of(Schema<?> press) {
        return inside("", press);
    }

    private static Stream<DescribedField> inside(String prefix, Schema<?> object) {
        List<String> required = Objects.requireNonNullElse(object.getRequired(), List.of());
        Map<?, ?> properties = Objects.requireNonNullElse(object.getProperties(), Map.of());
        return properties.entrySet().stream().flatMap(entry -> {
            String name = String.valueOf(entry.getKey());
            return one(prefix + name, name, (Schema<?>) entry.getValue(), required.contains(name));
        });
    }

    private static Stream<DescribedField> one(String name, String last, Schema<?> schema, boolean required) {
        if (schema.getOneOf() != null) {
            return one(name, last, schema.getOneOf().get(0), required);
        }
        if (schema.getAdditionalProperties() instanceof Schema<?> each) {
            return value(name + "." + A_CODE.get(last), last, each, false);
        }
        if (schema.getItems() != null && schema.getItems().getProperties() != null) {
            return inside(name + ".0.", schema.getItems());
        }
        return value(name, last, schema, required);
    }

    private static Stream<DescribedField> value(String name, String last, Schema<?> schema, boolean required) {
        return schema.getProperties() == null
                ? Stream.of(new DescribedField(name, shape(last, schema), required))
                : inside(name + ".", schema);
    }

    private static Shape shape(String last, Schema<?> schema) {
        @Nullable List<?> choices = schema.getEnum();
        if ("boolean".equals(schema.getType()) || (choices != null && choices.contains("yes"))) {
            return Shape.YES_NO;
        }
        if (choices != null) {
            return Shape.CHOICE;
        }
        return switch (schema.getType()) {
            case "integer", "number" -> last.equals("anchor") ? Shape.SIGNED : Shape.NUMBER;
            case "array" -> Shape.LIST;
            default -> WRITTEN.contains(last) ? Shape.WRITTEN : Shape.TEXT;
        };
    }
}
