package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sample page in a real browser at the three sizes, under the policy that the house sends. */
class LayoutIT extends SamplePages {
    private static final Map<Size, Page> SCREENS = new EnumMap<>(Size.class);

    /** Of these the whole house has the like, which {@code PagesIT} looks at as closely. */
    private static final Set<String> IN_THE_HOUSE = Set.of(
            "floor", "chair", "basins", "desk", "pocket", "check", "lead", "use", "look-ins", "rights", "privacy");

    private static String measure;
    private static String axe;
    private static Page any;

    enum Size {
        PHONE(390, 844),
        TABLET(1180, 820),
        WALL(1920, 1080);

        final int width;
        final int height;

        Size(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    /** A screen of each size for all pages, one after the other, as in a salon; nothing moves on them. */
    @BeforeAll
    static void openScreens() {
        for (var size : Size.values()) {
            SCREENS.put(
                    size,
                    chromium.browser.newPage(new Browser.NewPageOptions()
                            .setViewportSize(size.width, size.height)
                            .setReducedMotion(ReducedMotion.REDUCE)));
        }
        any = chromium.page();
    }

    @BeforeAll
    static void readScripts() throws IOException {
        measure = script("layout.js");
        axe = script("/axe.min.js");
    }

    private static String script(String name) throws IOException {
        try (var in = LayoutIT.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static Stream<String> names() {
        return Preview.samples().keySet().stream();
    }

    /** Opened once, and then as large as each screen in turn. */
    @ParameterizedTest
    @MethodSource("names")
    void fitsEachScreenAndTheKnuckleAndIsOpenToEverybody(String name) {
        var page = any;
        var complaints = new ArrayList<String>();
        Consumer<ConsoleMessage> refusals = message -> {
            if (message.text().contains("Content Security Policy")) {
                complaints.add(message.text());
            }
        };
        Consumer<String> errors = complaints::add;
        page.onConsoleMessage(refusals);
        page.onPageError(errors);
        page.navigate(server.url(name));
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        for (var size : Size.values()) {
            page.setViewportSize(size.width, size.height);
            assertThat((List<?>) page.evaluate(measure)).as("%s", size).isEqualTo(List.of());
        }
        page.offConsoleMessage(refusals);
        page.offPageError(errors);
        assertThat(complaints).isEmpty();
        if (IN_THE_HOUSE.contains(name)) {
            return;
        }
        page.evaluate(axe + "; 0");
        // Only what is wrong is told in full.
        var violations = page.evaluate("() => axe.run({ resultTypes: ['violations'] }).then((found) => "
                + "found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html).join(' | ')}`))");
        assertThat((List<?>) violations).isEqualTo(List.of());
    }

    /**
     * 64.5 px is 22 minutes of arc at 5 m on a 43 inch 16:9 screen of 1920 px: 5000 mm x tan(22/60 deg) = 32.0 mm, and a
     * px is 43 x 25.4 x 16 / sqrt(337) / 1920 = 0.4958 mm. A figure of B612 is 0.7656 em tall, measured in its bold.
     */
    @Test
    void theWallIsWholeAndItsFiguresAreReadFromAcrossTheRoom() {
        var page = screen(Size.WALL);
        page.navigate(server.url("floor"));
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        var tall = (Number) page.evaluate("() => Math.min(...[...document.querySelectorAll('.row .digits time')]"
                + ".map(time => parseFloat(getComputedStyle(time).fontSize) * 0.7656))");
        assertThat(tall.doubleValue()).isGreaterThanOrEqualTo(64.5);
        assertThat(page.evaluate("() => document.documentElement.scrollHeight <= innerHeight"))
                .isEqualTo(true);
        assertThat(page.evaluate("() => { const all = document.querySelector('.chairs');"
                        + " return all.scrollHeight <= all.clientHeight; }"))
                .isEqualTo(true);
    }

    /** Two lines of bells, every row that counts due at once, and four lines of who hears what. */
    @Test
    void theWallIsWholeAtItsLoudest() {
        var page = screen(Size.WALL);
        page.navigate(server.url("floor"));
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        var cut = page.evaluate("""
                () => {
                  const missed = Object.assign(document.createElement('a'), { className: 'missed', href: '/day/caught-up' });
                  missed.textContent = 'No server ran 10:00 to 10:23: catch up';
                  document.getElementById('bells').append(missed);
                  const ears = document.querySelector('.ears');
                  const ear = '<li class="ear"><strong>Ada, Bea, assistants</strong> one device, 1 silent</li>';
                  ears.innerHTML = ear.repeat(5);
                  document.querySelectorAll('.row').forEach((row) => row.querySelector('time') && row.classList.add('high'));
                  const sound = document.querySelector('.sound');
                  sound.textContent = sound.dataset.off;
                  sound.hidden = false;
                  const all = [document.querySelector('.chairs'), ears, document.documentElement];
                  const tall = all.filter((one) => one.scrollHeight > one.clientHeight);
                  const legend = document.querySelector('.legend').getBoundingClientRect().bottom;
                  const high = [sound, ears].filter((one) => one.getBoundingClientRect().top < legend);
                  return [...tall, ...high].map((one) => one.className || one.tagName);
                }""");
        assertThat((List<?>) cut).isEqualTo(List.of());
    }

    /** A bell is at most four lines of its own words tall; common practice, no source. */
    @ParameterizedTest
    @EnumSource(Size.class)
    void aDoubtOfTheClockAndWhatIsToBeCaughtUpOnLeaveBellsReadable(Size size) {
        var page = screen(size);
        page.navigate(server.url("chair"));
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        page.evaluate("""
                () => {
                  const doubt = document.getElementById('doubt');
                  doubt.textContent = doubt.dataset.behind;
                  doubt.hidden = false;
                  const missed = Object.assign(document.createElement('a'), { className: 'missed', href: '/day/caught-up' });
                  missed.textContent = 'No server ran 10:00 to 10:23: catch up';
                  document.getElementById('bells').append(missed);
                }""");
        var tallest =
                (Number) page.evaluate("() => Math.max(...[...document.querySelectorAll('.bell a, .missed, #doubt')]"
                        + ".map((one) => one.clientHeight / parseFloat(getComputedStyle(one).lineHeight)))");
        assertThat(tallest.doubleValue()).isBetween(0.9, 4.0);
    }

    /** Whom to call is read without a touch, with two questions above it, and no bar lies over any of first aid. */
    @ParameterizedTest
    @EnumSource(
            value = Size.class,
            names = {"PHONE", "TABLET"})
    void nothingHidesFirstAid(Size size) {
        var page = screen(size);
        page.navigate(server.url("chair-rinse"));
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        var hidden = page.evaluate("""
                () => {
                  const kept = Object.assign(document.createElement('div'), { id: 'kept', className: 'kept' });
                  const question = '<section class="answer high question"><h2 class="said">Water is on 08:31</h2>'
                      + '<p class="said">Not recorded: this must not be done now.</p><ul class="reasons"><li>'
                      + '<strong>This bell does not ring any more.</strong> <small>what is recorded</small></li></ul>'
                      + '<button class="press">Seen</button></section>';
                  kept.innerHTML = question + question;
                  document.getElementById('main').before(kept);
                  const missed = Object.assign(document.createElement('a'), { className: 'missed', href: '/day/caught-up' });
                  missed.textContent = 'No server ran 10:00 to 10:23: catch up';
                  document.getElementById('bells').append(missed);
                  return [...document.querySelectorAll('.aid h2, .aid li, .aid .call')].filter((line) => {
                    const { left, top, bottom } = line.getBoundingClientRect();
                    return [top + 1, bottom - 1].some((y) => !line.contains(document.elementFromPoint(left + 5, y)));
                  }).map((line) => line.textContent);
                }""");
        assertThat((List<?>) hidden).isEqualTo(List.of());
    }

    @Test
    void noColumnOfTheLeadsPageIsCutOnAPhone() {
        var page = screen(Size.PHONE);
        page.navigate(server.url("lead"));
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        page.evaluate("() => document.querySelectorAll('details').forEach((one) => (one.open = true))");
        assertThat((List<?>) page.evaluate("() => [...document.querySelectorAll('.cells')]"
                        + ".filter((one) => one.scrollWidth > one.clientWidth).map((one) => one.ariaLabel)"))
                .isEqualTo(List.of());
    }

    private static Page screen(Size size) {
        return Objects.requireNonNull(SCREENS.get(size));
    }
}
