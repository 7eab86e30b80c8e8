package rinsebell.app.press;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** A floor with something of everything: made through the API, as a program would. */
record ExampleFloor(Sender sender) {

    /** The numbers of what was made. */
    Map<String, Long> ids() {
        Map<String, Long> ids = new LinkedHashMap<>();
        made(ids, "/salon");
        ids.put("STAFF", made(ids, "/staff"));
        ids.put("PRODUCT", made(ids, "/products"));
        ids.put("RECIPE", made(ids, "/recipes"));
        ids.put("CLIENT", made(ids, "/clients"));
        ids.put("BOWL", made(ids, "/bowls", "intent", "fact"));
        ids.put("VISIT", made(ids, "/visits"));
        ids.put("APPLICATION", made(ids, "/visits/{id}/put-on", "intent", "fact"));
        ids.put("FACT", made(ids, "/visits/{id}/discomfort"));
        return ids;
    }

    private long made(Map<String, Long> ids, String path, String... more) {
        PressExamples examples = new PressExamples(ids);
        var body = examples.body(path);
        for (int i = 0; i + 1 < more.length; i += 2) {
            body.put(more[i], more[i + 1]);
        }
        Reply answer = sender.json(examples.address(path), body);
        assertThat(answer.statusCode()).as("%s: %s", path, answer.asString()).isEqualTo(201);
        JsonNode made = PressExamples.read(answer.asString());
        JsonNode facts = made.path("facts");
        return made.has("client")
                ? made.path("client").asLong()
                : facts.path(facts.size() - 1).asLong();
    }
}
