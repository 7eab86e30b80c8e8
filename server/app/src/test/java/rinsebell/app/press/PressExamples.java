package rinsebell.app.press;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Objects;

/**
 * One good example of every press, on a floor on which all of them have something to be about.
 *
 * @param ids the numbers of the things that were made for the examples, by their names in them
 */
record PressExamples(Map<String, Long> ids) {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Common practice, no source. */
    static final String POWDER = """
            {"name": "Powder", "kind": "powder-lightener", "zone": "off-scalp", "dye": false, "usableFor": 60,
             "atEnd": "rinse", "develops": {"from": 20, "to": 50, "counted": "from-first-on"}, "longestOn": 50,
             "covers": {"foil": {"allowed": true, "upTo": 50}},
             "heats": {"gentle-steam": {"allowed": true, "upTo": 10, "from": 10, "to": 30}},
             "mixtures": [{"name": "equal parts", "developerPer60": 60, "extraPer60": 7}],
             "strengths": [6, 9, 12], "strengthsOnScalp": [6], "peroxide": 0, "ammonia": 0,
             "pairings": {"permanent-colour": {"rule": "allowed", "atMostPer60": 7}},
             "checks": {"strandEvery": 10, "strandEveryHeated": 5, "scalpEvery": 10, "scalpEveryHeated": 5}}""";

    private static final Map<String, String> BODIES = Map.ofEntries(
            Map.entry("/visits", "{'label': 'M. A.', 'place': 'bench'}"),
            Map.entry("/visits/{id}/gate", "{'skinTest': 'none', 'scalp': 'fine'}"),
            Map.entry("/visits/{id}/move", "{'place': 'bench'}"),
            Map.entry("/visits/{id}/hand-over", "{'helper': STAFF}"),
            Map.entry("/visits/{id}/label", "{'label': 'M. A. (2)'}"),
            Map.entry("/visits/{id}/client", "{}"),
            Map.entry("/visits/{id}/leave", "{}"),
            Map.entry("/visits/{id}/put-on", "{'bowl': BOWL, 'area': 'lengths', 'zone': 'off-scalp'}"),
            Map.entry("/visits/{id}/already-on", "{'area': 'ends'}"),
            Map.entry("/visits/{id}/last-on", "{'application': APPLICATION}"),
            Map.entry("/visits/{id}/cover", "{'application': APPLICATION, 'cover': 'foil'}"),
            Map.entry("/visits/{id}/plan", "{'application': APPLICATION, 'planned': 20}"),
            Map.entry("/visits/{id}/heat-on", "{'heat': 'gentle-steam'}"),
            Map.entry("/visits/{id}/heat-off", "{}"),
            Map.entry("/visits/{id}/foils-out", "{'application': APPLICATION}"),
            Map.entry("/visits/{id}/emulsified", "{'application': APPLICATION}"),
            Map.entry("/visits/{id}/strand", "{'application': APPLICATION, 'level': 7, 'decision': '5'}"),
            Map.entry("/visits/{id}/scalp", "{'finding': 'fine'}"),
            Map.entry("/visits/{id}/rinse", "{'applications': [APPLICATION], 'basin': 'A'}"),
            Map.entry("/visits/{id}/wipe-off", "{'applications': [APPLICATION]}"),
            Map.entry("/visits/{id}/towel-dried", "{}"),
            Map.entry("/visits/{id}/lift", "{'reached': true}"),
            Map.entry("/visits/{id}/stop", "{}"),
            Map.entry("/visits/{id}/discomfort", "{'grade': 'tingling'}"),
            Map.entry("/bowls", "{'portions': [{'product': PRODUCT, 'grams': 30}], 'reason': 'tone'}"),
            Map.entry("/mixtures", "{'products': [{'product': PRODUCT}], 'grams': 30}"),
            Map.entry("/bowls/{id}/recipe", "{'portions': [{'product': PRODUCT, 'grams': 30.5}]}"),
            Map.entry("/bowls/{id}/divide", "{'reason': 'refill'}"),
            Map.entry("/bowls/{id}/throw-away", "{}"),
            Map.entry("/facts/{id}/set-back", "{'earlier': 1}"),
            Map.entry("/facts/{id}/withdraw", "{'all': true}"),
            Map.entry("/bells/acknowledge", "{'kind': 'burning', 'subject': VISIT, 'anchor': FACT}"),
            Map.entry(
                    "/bells/shelve",
                    "{'kind': 'tingling', 'subject': VISIT, 'anchor': FACT, 'minutes': 3, 'why': 'hands-full', 'by': STAFF}"),
            Map.entry("/salon", "{'name': 'Harbour', 'chairs': 9, 'basins': 2, 'bench': 6, 'zone': 'Europe/Berlin'}"),
            Map.entry("/staff", "{'name': 'Ines'}"),
            Map.entry("/staff/{id}", "{'name': 'Ines', 'role': 'desk', 'working': true}"),
            Map.entry("/products", POWDER),
            Map.entry("/products/{id}/directions", POWDER),
            Map.entry("/products/{id}/offer", "{'offered': true}"),
            Map.entry("/recipes", "{'name': 'Low tide', 'portions': [{'product': PRODUCT, 'grams': 30}]}"),
            Map.entry("/recipes/{id}/revise", "{'name': 'Ebb', 'portions': [{'product': PRODUCT, 'grams': 45}]}"),
            Map.entry("/recipes/{id}/drop", "{'dropped': false}"),
            Map.entry(
                    "/recipe-file",
                    "{'kind': 'rinsebell-recipes-1', 'recipes':"
                            + " [{'name': 'Flood', 'portions': [{'product': 'Powder', 'grams': 60.5}]}]}"),
            Map.entry("/products/{id}/price", "{'tubGrams': 450, 'price': 27.5}"),
            Map.entry("/shelf", "{}"),
            Map.entry("/clients", "{'label': 'M. A.'}"),
            Map.entry("/clients/{id}/note", "{'kind': 'reaction'}"),
            Map.entry("/clients/{id}/erase", "{}"),
            Map.entry("/policy", "{'applying': 30, 'working': {'walk': 1}, 'bowl': {'low': 20}}"),
            Map.entry("/visits/{id}/turn", "{'basin': 'B'}"),
            Map.entry("/visits/{id}/services", "{'services': ['bowl', 'cut']}"),
            Map.entry("/visits/{id}/service-begin", "{'service': 'cut'}"),
            Map.entry("/visits/{id}/service-end", "{'service': 'cut'}"),
            Map.entry("/visits/{id}/end-told", "{'until': '2026-11-30T23:30:00Z'}"),
            Map.entry("/staff/{id}/hours", "{'hours': {'monday': '9:00-13:00, 13:30-18:00'}}"),
            Map.entry("/times", "{'times': {'toner': 15, 'blow-dry': 20}}"),
            Map.entry("/day/break", "{'staff': STAFF}"),
            Map.entry("/day/back", "{'staff': STAFF}"),
            Map.entry("/day/basin-closed", "{'basin': 'B'}"),
            Map.entry("/day/basin-opened", "{'basin': 'B'}"),
            Map.entry("/day/caught-up", "{'finding': {'VISIT': 'fine'}, 'scalp': {'VISIT': '09:00'}}"),
            Map.entry("/day/clock", "{}"));

    /** The body of a press that is right, or would be at another time. */
    ObjectNode body(String path) {
        String text = Objects.requireNonNull(BODIES.get(path), () -> "no example of " + path);
        for (Map.Entry<String, Long> id : ids.entrySet()) {
            text = text.replace(id.getKey(), id.getValue().toString());
        }
        return read(text.replace('\'', '"'));
    }

    /** The address of a press, with the number of what it is about. */
    String address(String path) {
        String resource = path.split("/")[1];
        String name = switch (resource) {
            case "visits" -> "VISIT";
            case "bowls" -> "BOWL";
            case "facts" -> "FACT";
            case "staff" -> "STAFF";
            case "recipes" -> "RECIPE";
            default -> "PRODUCT";
        };
        return path.replace("{id}", ids.get(name) + "");
    }

    static ObjectNode read(String json) {
        try {
            return (ObjectNode) JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(json, e);
        }
    }

    /** The same body with another value at one place; what lies on the way there is made. */
    static ObjectNode with(ObjectNode body, String field, JsonNode value) {
        ObjectNode changed = body.deepCopy();
        String[] names = field.split("\\.");
        JsonNode at = changed;
        for (int i = 0; i + 1 < names.length; i++) {
            at = step(at, names[i], names[i + 1].equals("0"));
        }
        ((ObjectNode) at).set(names[names.length - 1], value);
        return changed;
    }

    private static JsonNode step(JsonNode from, String name, boolean toList) {
        if (from instanceof ArrayNode list) {
            return list.isEmpty() ? list.addObject() : list.get(0);
        }
        ObjectNode object = (ObjectNode) from;
        return toList ? object.withArrayProperty(name) : object.withObjectProperty(name);
    }
}
