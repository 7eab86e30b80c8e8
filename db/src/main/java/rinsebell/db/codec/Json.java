package rinsebell.db.codec;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Text to tree and back, nothing more: which field is what stands with each kind of event. */
final class Json {

    private static final ObjectMapper TREES = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .build();

    private Json() {}

    static ObjectNode object() {
        return TREES.createObjectNode();
    }

    /** One line, without spaces. */
    static String line(JsonNode tree) {
        return tree.toString();
    }

    /** @throws UnreadableFact if the text is no JSON object */
    static ObjectNode parse(String text) {
        try {
            if (TREES.readTree(text) instanceof ObjectNode object) {
                return object;
            }
            throw new UnreadableFact("not a JSON object: " + text);
        } catch (JsonProcessingException e) {
            throw new UnreadableFact("not JSON: " + text, e);
        }
    }
}
