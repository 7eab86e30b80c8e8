package rinsebell.app.press;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.swagger.v3.oas.models.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Bodies as the API's description has them, or nearly: from a seed, so that each can be had again. */
record Imagined(Random random, List<Hostile> hostile) {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final int DEEPEST = 6;
    private static final List<String> TEXTS = List.of("M. A.", "Low tide", "09:15", "2026-11-30", "fine", "A", "bench");

    /**
     * One value.
     *
     * @param wrong how often, of a thousand, something else stands there
     */
    JsonNode value(@Nullable Schema<?> schema, int wrong) {
        return value(schema, wrong, 0);
    }

    private JsonNode value(@Nullable Schema<?> schema, int wrong, int depth) {
        if (schema == null || depth > DEEPEST || random.nextInt(1_000) < wrong) {
            return hostile.get(random.nextInt(hostile.size())).tree();
        }
        List<?> choices = schema.getEnum();
        if (choices != null && !choices.isEmpty()) {
            return JSON.pojoNode(choices.get(random.nextInt(choices.size())));
        }
        if (schema.getOneOf() != null && !schema.getOneOf().isEmpty()) {
            return value(schema.getOneOf().get(random.nextInt(schema.getOneOf().size())), wrong, depth + 1);
        }
        return switch (Objects.requireNonNullElse(schema.getType(), "object")) {
            case "integer" -> JSON.numberNode(number());
            case "number" -> JSON.numberNode(BigDecimal.valueOf(number()).movePointLeft(random.nextInt(3)));
            case "boolean" -> JSON.booleanNode(random.nextBoolean());
            case "string" -> JSON.textNode(TEXTS.get(random.nextInt(TEXTS.size())));
            case "array" -> list(schema.getItems(), wrong, depth);
            default -> object(schema, wrong, depth);
        };
    }

    /** Mostly one that something has. */
    private long number() {
        return random.nextInt(10) == 0 ? random.nextInt(100_000) - 1_000 : 1 + random.nextInt(40);
    }

    private ArrayNode list(@Nullable Schema<?> items, int wrong, int depth) {
        ArrayNode list = JSON.arrayNode();
        for (int i = random.nextInt(4); i > 0; i--) {
            list.add(value(items, wrong, depth + 1));
        }
        return list;
    }

    private ObjectNode object(Schema<?> schema, int wrong, int depth) {
        ObjectNode object = JSON.objectNode();
        List<String> required = Objects.requireNonNullElse(schema.getRequired(), List.of());
        Map<?, ?> properties = Objects.requireNonNullElse(schema.getProperties(), Map.of());
        properties.forEach((name, each) -> {
            boolean isSaid =
                    required.contains(String.valueOf(name)) ? random.nextInt(1_000) >= wrong : random.nextInt(3) == 0;
            if (isSaid) {
                object.set(String.valueOf(name), value((Schema<?>) each, wrong, depth + 1));
            }
        });
        if (random.nextInt(1_000) < wrong) {
            object.set("unheard-of", JSON.numberNode(1));
        }
        return object;
    }
}
