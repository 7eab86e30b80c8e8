package rinsebell.app.press;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.app.press.DescribedField.Shape;

/**
 * Something that nobody should send.
 *
 * @param json as a JSON text
 * @param never the shapes of field that can't mean anything by it
 * @param isNothing whether it says nothing, so that only a field that must be said is wrong
 */
record Hostile(String json, Set<Shape> never, boolean isNothing) {

    private static final Set<Shape> EVERYWHERE = EnumSet.allOf(Shape.class);
    private static final Set<Shape> BUT_IN_TEXT = EnumSet.complementOf(EnumSet.of(Shape.TEXT));
    private static final Set<Shape> TOO_SMALL = EnumSet.complementOf(EnumSet.of(Shape.TEXT, Shape.SIGNED));

    static List<Hostile> all() {
        return Stream.of(nothings(), numbers(), oddNumbers(), texts(), nested())
                .flatMap(each -> each)
                .toList();
    }

    /** A third of them, another one for the next turn. */
    static List<Hostile> eachThird(int turn) {
        List<Hostile> all = all();
        return IntStream.range(0, all.size())
                .filter(i -> (i + turn) % 3 == 0)
                .mapToObj(all::get)
                .toList();
    }

    private static Stream<Hostile> nothings() {
        return Stream.of("\"\"", "\"  \\t\\n \"", "\"\\u200b\\u2003\"", "null", "[]", "[null]")
                .map(json -> new Hostile(json, json.contains("200b") ? BUT_IN_TEXT : Set.of(), true));
    }

    private static Stream<Hostile> numbers() {
        return Stream.of(
                        "1e308",
                        "-1e308",
                        "-99999",
                        "9223372036854775808",
                        "\"" + "9".repeat(10_000) + "\"",
                        "\"NaN\"",
                        "\"Infinity\"",
                        "\"0x10\"",
                        "\"1,000,000\"",
                        "\"٣\"")
                .map(json -> new Hostile(json, json.equals("-99999") ? TOO_SMALL : BUT_IN_TEXT, false));
    }

    /** In a number these may be right, or just not known. */
    private static Stream<Hostile> oddNumbers() {
        return Stream.of("0", "99999999", "0.00000001", "1.0", "\"+7\"", "\"7,5\"")
                .map(json -> new Hostile(json, Set.of(Shape.CHOICE), false));
    }

    private static Stream<Hostile> texts() {
        return Stream.concat(
                Stream.of(
                                "\"👩‍🦰 שלום عليكم\"",
                                "\"<script>alert(1)</script>\"",
                                "\"' or 1=1; drop table fact --\"",
                                "\"{0} ${x} %s %n\"",
                                "\"../../etc/passwd\"")
                        .map(json -> new Hostile(json, BUT_IN_TEXT, false)),
                Stream.of(
                                "\"" + "x".repeat(10_000) + "\"",
                                "\"a\\u0000b\"",
                                "\"\\u202Eabc\"",
                                "\"\\uD800\"",
                                "\"a\\u2028b\"")
                        .map(json -> new Hostile(json, EVERYWHERE, false)));
    }

    private static Stream<Hostile> nested() {
        return Stream.of(
                        "{\"a\":1}",
                        "[[1]]",
                        "[{\"b\":[1]}]",
                        "{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":1}}}}}}}",
                        "[\"a\",\"b\"]")
                .map(json -> new Hostile(json, EVERYWHERE, false));
    }

    /** Whether this in a field is a fault, when everything beside it is right. */
    boolean isWrongIn(DescribedField field) {
        boolean isLeftOut = isNothing && field.shape() != Shape.LIST;
        return never.contains(field.shape()) || (isLeftOut && field.required());
    }

    /** Whether this in every field is a fault in this one: a row in which nothing is said is no row. */
    boolean isWrongEverywhere(DescribedField field) {
        return isWrongIn(field) && !(isNothing && field.name().contains(".0.") && !never.contains(field.shape()));
    }

    /** What is sent. */
    JsonNode tree() {
        try {
            return new ObjectMapper().readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(json, e);
        }
    }

    /** What a form can say of it; nothing where only JSON can say such a thing. */
    Optional<String> typed() {
        return Optional.of(tree())
                .filter(JsonNode::isValueNode)
                .filter(node -> !node.isNull())
                .map(JsonNode::asText)
                .filter(text -> StandardCharsets.UTF_8.newEncoder().canEncode(text));
    }

    @Override
    public String toString() {
        return json.length() > 40 ? json.substring(0, 40) + "... (" + json.length() + ")" : json;
    }
}
