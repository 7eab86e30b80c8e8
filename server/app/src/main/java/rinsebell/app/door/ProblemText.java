package rinsebell.app.door;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.Map;
import rinsebell.web.Words;

/** Writes a problem for whoever asked: problem details (RFC 9457) under {@code /api}, a page anywhere else. */
public final class ProblemText {

    static final String JSON_TYPE = "application/problem+json";
    static final String HTML_TYPE = "text/html; charset=utf-8";

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Words words;
    private final ProblemPage page;

    public ProblemText(Words words, ProblemPage page) {
        this.words = words;
        this.page = page;
    }

    /** Whether the address belongs to the API, whose answers are for programs. */
    public static boolean forPrograms(String path) {
        return path.equals("/api") || path.startsWith("/api/");
    }

    static String typeFor(String path) {
        return forPrograms(path) ? JSON_TYPE : HTML_TYPE;
    }

    /** The body of the answer, in the type of {@link #typeFor}. */
    String write(Problem problem, String path) {
        return forPrograms(path) ? json(problem) : html(problem);
    }

    private String html(Problem problem) {
        return page.with(title(problem), detail(problem));
    }

    private String json(Problem problem) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("type", "urn:rinsebell:problem:" + problem.code().code());
        members.put("title", title(problem));
        members.put("status", problem.code().status());
        members.put("detail", detail(problem));
        members.put("code", problem.code().code());
        if (!problem.fields().isEmpty()) {
            members.put("errors", problem.fields());
        }
        return json(members);
    }

    private static String json(Map<String, Object> members) {
        try {
            return JSON.writeValueAsString(members);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("problem details must always be JSON: " + members, e);
        }
    }

    private String title(Problem problem) {
        return words.say("problem." + problem.code().code() + ".title");
    }

    private String detail(Problem problem) {
        return words.say("problem." + problem.code().code() + ".detail");
    }
}
