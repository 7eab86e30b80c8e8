package rinsebell.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The style sheet as a test reads it: rules with their declarations, and the tokens of each look. */
record StyleSheet(List<Rule> rules) {
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
    private static final Pattern TOKEN = Pattern.compile("var\\(--([a-z-]+)\\)");

    record Rule(String selector, Map<String, String> declarations) {
        /** The token of the first of these properties that has one. */
        Optional<String> token(String... properties) {
            for (var property : properties) {
                var found = TOKEN.matcher(declarations.getOrDefault(property, ""));
                if (found.find()) {
                    return Optional.of(found.group(1));
                }
            }
            return Optional.empty();
        }
    }

    static StyleSheet read() {
        var text = new StringBuilder();
        Assets.STYLES.forEach(name -> text.append(file(name)));
        return of(text.toString());
    }

    static StyleSheet of(String css) {
        var rules = new ArrayList<Rule>();
        var found = RULE.matcher(COMMENT.matcher(css).replaceAll(""));
        while (found.find()) {
            rules.add(new Rule(found.group(1).strip().replaceAll("\\s+", " "), declarations(found.group(2))));
        }
        return new StyleSheet(rules);
    }

    static String file(String name) {
        try {
            return Files.readString(Path.of("src/main/resources/rinsebell/web/assets/css/" + name + ".css"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Colours by token name, as a look has them; dark refines light. */
    Map<String, String> colours(boolean dark) {
        var colours = new LinkedHashMap<String, String>();
        for (var rule : rules) {
            if (rule.selector().equals(":root") || dark && rule.selector().equals("[data-look=\"dark\"]")) {
                rule.declarations().forEach((name, value) -> {
                    if (value.startsWith("#")) {
                        colours.put(name.substring(2), value);
                    }
                });
            }
        }
        return colours;
    }

    private static Map<String, String> declarations(String body) {
        var declarations = new LinkedHashMap<String, String>();
        for (var line : body.split(";")) {
            var colon = line.indexOf(':');
            if (colon > 0) {
                declarations.put(
                        line.substring(0, colon).strip(),
                        line.substring(colon + 1).strip());
            }
        }
        return declarations;
    }
}
