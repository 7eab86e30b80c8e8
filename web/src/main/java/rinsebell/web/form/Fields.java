package rinsebell.web.form;

import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What was typed: values by the name of their field, from the body of a form or from JSON. Nothing here is checked.
 *
 * <p>Names of nested values are joined by dots, positions in a list of objects count from 0: {@code portions.0.grams}.
 */
public final class Fields {
    public static final Fields NONE = new Fields(Map.of(), false);
    /** Deeper JSON than this names no field of any form; it is not looked into. */
    private static final int DEEPEST = 6;

    private static final int LONGEST_EXPONENT = 32;

    private final Map<String, List<String>> values;
    private final boolean everyNameCounts;

    private Fields(Map<String, List<String>> values, boolean everyNameCounts) {
        this.values = values;
        this.everyNameCounts = everyNameCounts;
    }

    public static Fields of(Map<String, List<String>> values) {
        var copy = new LinkedHashMap<String, List<String>>();
        values.forEach((name, all) -> copy.put(name, List.copyOf(all)));
        return new Fields(copy, false);
    }

    /** Names and values in turn, for one value a field. */
    public static Fields of(String... namesAndValues) {
        var copy = new LinkedHashMap<String, List<String>>();
        for (var i = 0; i + 1 < namesAndValues.length; i += 2) {
            copy.computeIfAbsent(namesAndValues[i], name -> new ArrayList<>()).add(namesAndValues[i + 1]);
        }
        return of(copy);
    }

    /**
     * From a JSON object as a JSON library hands it out. A program that misspells a name must hear of it, or its
     * press would be taken for another one; in a form's body there may be anything that a browser adds.
     *
     * @param object maps, lists, strings, numbers, booleans and nulls
     */
    public static Fields ofTree(Map<?, ?> object) {
        var flat = new LinkedHashMap<String, List<String>>();
        object.forEach((name, value) -> flatten(String.valueOf(name), value, flat, 1));
        return new Fields(flat, true);
    }

    private static void flatten(String name, @Nullable Object value, Map<String, List<String>> flat, int depth) {
        if (value == null) {
            return;
        }
        if (depth > DEEPEST) {
            flat.put(name, List.of());
        } else if (value instanceof Map<?, ?> object) {
            object.forEach((key, inner) -> flatten(name + "." + key, inner, flat, depth + 1));
        } else if (value instanceof List<?> list) {
            flatten(name, list, flat, depth);
        } else {
            flat.computeIfAbsent(name, fresh -> new ArrayList<>()).add(written(value));
        }
    }

    /** A library may hand out 60.0 as 6E+1, which nobody types; an exponent that would fill the memory stays one. */
    private static String written(Object value) {
        return value instanceof BigDecimal number && Math.abs(number.scale()) <= LONGEST_EXPONENT
                ? number.toPlainString()
                : value.toString();
    }

    private static void flatten(String name, List<?> list, Map<String, List<String>> flat, int depth) {
        for (var i = 0; i < list.size(); i++) {
            var nested = list.get(i) instanceof Map || list.get(i) instanceof List;
            flatten(nested ? name + "." + i : name, list.get(i), flat, depth + 1);
        }
    }

    /** Everything typed under a name; empty when there is no such field. */
    public List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    /** What was typed first under a name, as it was typed. */
    public Optional<String> first(String name) {
        return all(name).stream().findFirst();
    }

    public boolean isEmpty() {
        return values.isEmpty();
    }

    public Set<String> names() {
        return values.keySet();
    }

    /** As they stand behind the question mark of an address. */
    public String query() {
        return values.entrySet().stream()
                .flatMap(
                        field -> field.getValue().stream().map(value -> encoded(field.getKey()) + "=" + encoded(value)))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** These fields but for one. */
    public Fields without(String name) {
        var others = new LinkedHashMap<>(values);
        others.remove(name);
        return new Fields(others, everyNameCounts);
    }

    /** These fields, and others where these have none. */
    public Fields orElse(Fields others) {
        var both = new LinkedHashMap<>(others.values);
        both.putAll(values);
        return new Fields(both, everyNameCounts);
    }

    /** Whether a name that no form knows is a fault. */
    boolean everyNameCounts() {
        return everyNameCounts;
    }
}
