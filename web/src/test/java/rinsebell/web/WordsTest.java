package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Rule;
import rinsebell.web.view.Urgency;

class WordsTest {
    private static final Pattern SAID = Pattern.compile("screen\\.say\\(\"([^\"]+)\"[,)]");

    private final Words words = Words.british();

    @Test
    void everyTextOfATemplateIsInTheBundle() throws IOException {
        assertThat(words.keys()).containsAll(saidByTemplates());
    }

    @Test
    void everyPlaceAndUrgencyAndRuleHasItsWords() {
        for (var nav : Nav.values()) {
            assertThat(words.knows(nav.key())).as(nav.key()).isTrue();
        }
        for (var urgency : Urgency.values()) {
            assertThat(words.knows(urgency.key())).as(urgency.key()).isEqualTo(urgency.rings());
        }
        for (var kind : Rule.Kind.values()) {
            assertThat(words.knows(kind.key())).as(kind.key()).isTrue();
        }
    }

    @Test
    void everyTextIsAPatternAndSaysSomething() {
        for (var key : words.keys()) {
            assertThat(words.say(key, 2, 3, 4, 5)).as(key).isNotBlank();
        }
    }

    @Test
    void aStraightApostropheWouldVanishInAPattern() throws IOException {
        assertThat(Files.readAllLines(Path.of("src/main/resources/rinsebell/web/words.properties")))
                .allSatisfy(line -> assertThat(line).doesNotContain("'"));
    }

    @Test
    void aMissingTextIsABug() {
        assertThatThrownBy(() -> words.say("no.such.text"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no.such.text");
    }

    private static Set<String> saidByTemplates() throws IOException {
        var keys = new TreeSet<String>();
        try (var files = Files.walk(Path.of("src/main/jte"))) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                SAID.matcher(Files.readString(file)).results().forEach(found -> keys.add(found.group(1)));
            }
        }
        assertThat(keys).hasSizeGreaterThan(20);
        return keys;
    }
}
