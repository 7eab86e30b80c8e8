package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Flash rates: normal 1.4 to 2.8 Hz and slow 0.4 to 0.8 Hz are those of IEC 60073, as quoted by the IEEE P1621 draft of
 * 2002, section 4.4; that a high bell takes the first and a medium one the second, lit 20 to 60 % of the time, is IEC
 * 60601-1-8, Table 2 (from memory). Never more than three flashes in a second: WCAG 2.2, 2.3.1.
 */
class FlashTest {
    private static final Pattern ANIMATION =
            Pattern.compile("([^{}]+)\\{[^{}]*animation:\\s*([a-z]+)\\s+([0-9.]+)s[^;}]*infinite");

    private final String css = StyleSheet.file("motion");

    record Flashing(String who, double hertz) {}

    @Test
    void highAndMediumFlashAtTheirRates() {
        var flashing = flashing();
        assertThat(flashing).hasSize(3);
        for (var one : flashing) {
            var high = one.who().contains("high");
            assertThat(one.hertz()).as(one.who()).isBetween(high ? 1.4 : 0.4, high ? 2.8 : 0.8);
            assertThat(one.who()).doesNotContain(".low", ".calm", ".asked");
        }
    }

    @Test
    void nothingElsewhereMoves() {
        for (var name : Assets.STYLES) {
            if (!name.equals("motion")) {
                assertThat(StyleSheet.file(name)).as(name).doesNotContain("animation", "transition", "@keyframes");
            }
        }
    }

    @Test
    void aCycleIsOneFlashAndStaysReadable() {
        assertThat(css).containsOnlyOnce("@keyframes").contains("0%, 50% { opacity: 1; } 51%, 99% { opacity: 0.3; }");
    }

    @Test
    void whoeverWantsNoMotionGetsNone() {
        var calm = css.substring(css.indexOf("@media (prefers-reduced-motion: reduce)"));
        flashing().forEach(one -> assertThat(calm).contains(one.who()));
        assertThat(calm).contains("animation: none");
    }

    private List<Flashing> flashing() {
        var all = new ArrayList<Flashing>();
        var found = ANIMATION.matcher(css);
        while (found.find()) {
            all.add(new Flashing(found.group(1).strip(), 1 / Double.parseDouble(found.group(3))));
        }
        return all;
    }
}
