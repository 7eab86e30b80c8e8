package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Contrast by the formula of WCAG 2.2 (w3c/wcag at 58080bd, "relative luminance" and "contrast ratio"): text at least
 * 4.5 (1.4.3), graphics at least 3 (1.4.11), neither rounded.
 */
class ContrastTest {
    private static final List<String> GROUNDS = List.of("ground", "lit", "panel");
    private static final Set<String> GRAPHICS = Set.of("edge", "gone", "post", "focus");

    private final StyleSheet sheet = StyleSheet.read();

    @ParameterizedTest
    @CsvSource({
        "#0000ff, #ffffff,  8.59, published at a11y.jenn.dev/posts/calculating-contrast",
        "#999999, #ffffff,  2.85, published at dev.to/michael_lip",
        "#000000, #ffffff, 21.00, both ends",
        "#777777, #ffffff,  4.4781, just below 4.5",
        "#767676, #ffffff,  4.5422, just above 4.5",
        "#959595, #ffffff,  2.9953, just below 3",
        "#949494, #ffffff,  3.0335, just above 3",
        "#ff0000, #000000,  5.2520, derived",
    })
    void theFormulaGivesTheKnownRatios(String one, String other, double ratio, String source) {
        assertThat(Contrast.ratio(one, other)).as(source).isCloseTo(ratio, within(0.005));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyTextStandsOutFromEveryGround(boolean dark) {
        var colours = sheet.colours(dark);
        for (var text : colours.keySet()) {
            if (isInk(text)) {
                GROUNDS.forEach(ground -> atLeast(4.5, colours, text, ground));
            }
            if (text.startsWith("on-")) {
                atLeast(4.5, colours, text, text.substring(3));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyGraphicStandsOutFromEveryGround(boolean dark) {
        var colours = sheet.colours(dark);
        for (var graphic : colours.keySet()) {
            if (GRAPHICS.contains(graphic) || graphic.endsWith("-edge")) {
                GROUNDS.forEach(ground -> atLeast(3, colours, graphic, ground));
            }
        }
    }

    /** What is drawn over the bars: marks on the solid part, notes and the ring on the pale part. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void whatLiesOnABarStandsOutFromIt(boolean dark) {
        var colours = sheet.colours(dark);
        atLeast(3, colours, "post", "left");
        atLeast(3, colours, "gone", "left");
        atLeast(4.5, colours, "ink-quiet", "left");
    }

    @Test
    void textHasOnlyColoursThatAreChecked() {
        for (var rule : sheet.rules()) {
            rule.token("color")
                    .ifPresent(text -> assertThat(isInk(text) || text.startsWith("on-"))
                            .as("%s { color: --%s }", rule.selector(), text)
                            .isTrue());
        }
    }

    /** A fill with letters of its own names both in one rule, so that no other colour can come between. */
    @Test
    void whoeverFillsAlsoColoursTheLetters() {
        for (var rule : sheet.rules()) {
            rule.token("background")
                    .ifPresent(fill -> assertThat(rule.token("color"))
                            .as("%s { background: --%s }", rule.selector(), fill)
                            .hasValueSatisfying(
                                    text -> assertThat(GROUNDS.contains(fill) ? isInk(text) : text.equals("on-" + fill))
                                            .isTrue()));
            rule.token("color")
                    .filter(text -> text.startsWith("on-"))
                    .ifPresent(text -> assertThat(rule.token("background").or(() -> inheritedFill(rule.selector())))
                            .as("%s { color: --%s }", rule.selector(), text)
                            .hasValue(text.substring(3)));
        }
    }

    @Test
    void noColourIsWrittenOutsideTheTokens() {
        for (var name : Assets.STYLES) {
            if (!name.equals("tokens")) {
                assertThat(StyleSheet.file(name))
                        .as(name)
                        .doesNotContainPattern("#[0-9a-fA-F]{3,8}\\b|rgb|hsl|!important");
            }
        }
    }

    @Test
    void bothLooksHaveEveryColour() {
        var light = new TreeSet<>(sheet.colours(false).keySet());
        var dark = new TreeSet<String>();
        for (var rule : sheet.rules()) {
            if (rule.selector().equals("[data-look=\"dark\"]")) {
                rule.declarations().keySet().forEach(name -> dark.add(name.substring(2)));
            }
        }
        assertThat(dark).isEqualTo(light).hasSizeGreaterThan(20);
    }

    /** {@code .press.main small} stands on what {@code .press.main} fills. */
    private Optional<String> inheritedFill(String selector) {
        return sheet.rules().stream()
                .filter(rule -> rule.token("background").isPresent())
                .filter(rule ->
                        Arrays.stream(rule.selector().split(", ")).allMatch(part -> selector.contains(part + " ")))
                .flatMap(rule -> rule.token("background").stream())
                .findFirst();
    }

    private static boolean isInk(String token) {
        return token.startsWith("ink") || token.endsWith("-ink");
    }

    private static void atLeast(double ratio, Map<String, String> colours, String one, String other) {
        var first = Objects.requireNonNull(colours.get(one), one);
        var second = Objects.requireNonNull(colours.get(other), other);
        assertThat(Contrast.ratio(first, second))
                .as("--%s %s on --%s %s", one, first, other, second)
                .isGreaterThanOrEqualTo(ratio);
    }
}
