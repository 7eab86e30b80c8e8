package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Rule;
import rinsebell.web.view.Urgency;

class WordsTest {
    private static final Pattern SAID = Pattern.compile("screen\\.say\\(\"([^\"]+)\"[,)]");

    private static final Pattern CODED = Pattern.compile("\\bsay\\(\\s*\"([^\"]+)\"\\s*[,)]");

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
    void everyBellAndReasonHasItsWords() {
        for (var kind : BellKind.values()) {
            assertThat(words.knows("bell." + kind.name().toLowerCase(Locale.ROOT)))
                    .as(kind.name())
                    .isTrue();
        }
        for (var code : ReasonCode.values()) {
            assertThat(words.knows("reason." + code.name().toLowerCase(Locale.ROOT)))
                    .as(code.name())
                    .isTrue();
        }
        for (var basis : ReasonCode.Basis.values()) {
            assertThat(words.knows("basis." + basis.name().toLowerCase(Locale.ROOT)))
                    .as(basis.name())
                    .isTrue();
        }
    }

    /** Boards word these by their type's name and their own. */
    @ParameterizedTest
    @ValueSource(
            classes = {
                Area.class,
                Zone.class,
                Heat.class,
                Cover.class,
                Kind.class,
                Limit.Why.class,
                Complaint.Grade.class,
                ScalpCheck.Finding.class,
                StrandFinding.Tone.class,
                StrandFinding.Stretch.class,
                StrandFinding.Dryness.class,
                Gate.Scalp.class,
                Left.Quarters.class
            })
    void everyWordOfTheFloorIsWorded(Class<? extends Enum<?>> type) {
        for (var value : type.getEnumConstants()) {
            var key = (type.getSimpleName() + "." + value.name()).toLowerCase(Locale.ROOT);
            assertThat(words.knows(key)).as(key).isTrue();
        }
    }

    @Test
    void everyTextThatCodeNamesIsInTheBundle() throws IOException {
        var keys = new TreeSet<String>();
        try (var files = Files.walk(Path.of("src/main/java"))) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                CODED.matcher(Files.readString(file)).results().forEach(found -> keys.add(found.group(1)));
            }
        }
        assertThat(keys).hasSizeGreaterThan(50);
        assertThat(words.keys()).containsAll(keys);
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
