package rinsebell.app.api;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Directions as programs type them. Common practice, no source; every figure that is not is made up. */
final class Shelf {

    private Shelf() {}

    /** Powder that stays active for an hour, an equal weight of developer, off scalp only. */
    static Map<String, Object> powder() {
        Map<String, Object> json = lightener("Powder lightener", "powder-lightener", "off-scalp");
        json.put("covers", Map.of("foil", Map.of("allowed", true, "upTo", 50)));
        json.put("mixtures", List.of(Map.of("name", "equal parts", "developerPer60", 60, "extraPer60", 7)));
        json.put("pairings", Map.of("permanent-colour", Map.of("rule", "never")));
        return json;
    }

    /** A cream that may touch the scalp; gentle steam may be used, a dryer may not. */
    static Map<String, Object> cream() {
        Map<String, Object> json = lightener("Mild cream", "mild-cream-lightener", "on-scalp");
        json.put("heats", Map.of("gentle-steam", Map.of("allowed", true, "upTo", 20, "from", 15, "to", 30)));
        json.put("mixtures", List.of(Map.of("name", "equal parts", "developerPer60", 60)));
        json.put("strengthsOnScalp", List.of(3, 6));
        return json;
    }

    private static Map<String, Object> lightener(String name, String kind, String zone) {
        Map<String, Object> json = new HashMap<>();
        json.put("name", name);
        json.put("kind", kind);
        json.put("zone", zone);
        json.put("dye", false);
        json.put("usableFor", 60);
        json.put("atEnd", "rinse");
        json.put("develops", Map.of("from", 20, "to", 50, "counted", "from-first-on"));
        json.put("strengths", List.of(6, 9, 12));
        json.put("checks", Map.of("strandEvery", 10, "strandEveryHeated", 5));
        return json;
    }

    /** It allows every cover and heat: what it is mixed with decides. */
    static Map<String, Object> developer() {
        Map<String, Object> json = new HashMap<>();
        json.put("name", "Developer 20 vol");
        json.put("kind", "developer");
        json.put("zone", "on-scalp");
        json.put("dye", false);
        json.put("peroxide", 6);
        json.put("covers", allowed("foil", "film", "cap"));
        json.put("heats", allowed("gentle-steam", "warm-air", "dryer"));
        return json;
    }

    private static Map<String, Object> allowed(String... codes) {
        return Arrays.stream(codes).collect(Collectors.toMap(code -> code, code -> Map.of("allowed", true)));
    }
}
