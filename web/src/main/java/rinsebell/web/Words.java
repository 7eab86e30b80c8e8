package rinsebell.web;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Every text that a person reads, by key. The texts are {@link MessageFormat} patterns in British English. */
public final class Words {
    private static final String BUNDLE = "words.properties";

    private final Map<String, String> patterns;

    private Words(Map<String, String> patterns) {
        this.patterns = patterns;
    }

    /** The one bundle that the house ships. */
    public static Words british() {
        var properties = new Properties();
        try (var in = Words.class.getResourceAsStream(BUNDLE)) {
            if (in == null) {
                throw new IllegalStateException("the message bundle " + BUNDLE + " is missing beside " + Words.class);
            }
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Words(properties.stringPropertyNames().stream()
                .collect(Collectors.toMap(key -> key, properties::getProperty, (a, b) -> a, TreeMap::new)));
    }

    /**
     * The text under a key, with its arguments filled in.
     *
     * @throws IllegalArgumentException when the bundle has no such key: a missing text is a bug, never an empty label
     */
    public String say(String key, Object... arguments) {
        var pattern = patterns.get(key);
        if (pattern == null) {
            throw new IllegalArgumentException("the message bundle has no text for " + key);
        }
        return new MessageFormat(pattern, Locale.UK).format(arguments);
    }

    public boolean knows(String key) {
        return patterns.containsKey(key);
    }

    public Set<String> keys() {
        return Collections.unmodifiableSet(patterns.keySet());
    }
}
