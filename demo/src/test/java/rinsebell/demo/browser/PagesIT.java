package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.demo.DemoHere;

/** Every page of the invented Saturday at the sizes of phone, tablet and wall: it fits, and everybody can use it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesIT {
    /** Of the demo's chairs: two bowls on one head, seated, nearly past it, under steam, mixed, free. */
    private static final List<Integer> CHAIRS = List.of(1, 3, 4, 6, 7, 8);

    private static final List<String> PLACES = List.of("/", "/basins", "/desk", "/bells", "/pocket", "/lead");

    private static final List<String> FORMS = List.of(
            "/welcome",
            "/bowls",
            "/bowls/mix",
            "/mixtures",
            "/mixtures?products.0.product=13&products.1.product=16&developer=18&grams=90&blend=yes",
            "/mixtures/weigh?products.0.product=13&products.1.product=16&developer=18&grams=90&weighed.0.grams=50",
            "/recipes",
            "/recipes/new",
            "/recipe-file",
            "/use",
            "/look-ins",
            "/products",
            "/products/new",
            "/products/13/price",
            "/products/13/history",
            "/setup",
            "/staff",
            "/staff/2/hours",
            "/policy",
            "/privacy",
            "/times",
            "/clients",
            "/day",
            "/day/break",
            "/day/caught-up");

    /** Where nobody comes by a link of the pages above. */
    private static final List<String> SELDOM = List.of("/me", "/rights", "/pins", "/devices", "/join", "/unlock");

    private static final String LINKS = "() => [...document.querySelectorAll('a[href^=\"/\"]:not([download])')]"
            + ".map(link => link.getAttribute('href')).filter(link => !link.startsWith('/api/'))";

    /** What no policy of ours lets in. */
    private static final String INLINE =
            "() => document.head.append(Object.assign(document.createElement('script'), {textContent: '1'}))";

    private static final List<String> OF_A_HEAD = List.of(
            "more",
            "gate",
            "strand",
            "scalp",
            "put-on",
            "already-on",
            "heat-on",
            "cover",
            "rinse",
            "lift",
            "move",
            "hand-over",
            "client",
            "turn",
            "services",
            "service-begin",
            "end-told",
            "leave");

    @SuppressWarnings("NullAway.Init")
    private DemoHere demo;

    @SuppressWarnings("NullAway.Init")
    private Browsing browsing;

    @BeforeAll
    void starts(@TempDir Path folder) throws Exception {
        demo = DemoHere.in(folder.resolve("data"));
        browsing = Browsing.overPlainHttp();
    }

    @AfterEach
    void putsAway() {
        browsing.putAway();
    }

    @AfterAll
    void stops() {
        browsing.close();
        demo.close();
    }

    static Stream<Size> largerSizes() {
        return Stream.of(Size.TABLET, Size.WALL);
    }

    /** Whatever a link leads to, one page of each kind, on the phone, which is narrowest; our policy refuses nothing of it. */
    @Test
    void everyPageFitsAPhoneAndIsOpenToEverybody() {
        var page = browsing.screen(Size.PHONE);
        var live = live(page);
        var ofAHead = OF_A_HEAD.stream().map(press -> live.get(PLACES.size()) + "/" + press);
        var ahead = new ArrayDeque<>(Stream.of(live.stream(), FORMS.stream(), SELDOM.stream(), ofAHead)
                .flatMap(all -> all)
                .toList());
        var kinds = ahead.stream().map(PagesIT::kind).collect(Collectors.toCollection(HashSet::new));
        var wrong = new ArrayList<String>();
        while (!ahead.isEmpty()) {
            var path = ahead.remove();
            open(page, path, Size.PHONE);
            if (Browsing.overflow(page) > 0) {
                wrong.add(path + " is wider than its screen");
            }
            browsing.violations(page).forEach(violation -> wrong.add(path + " " + violation));
            links(page).stream().filter(link -> kinds.add(kind(link))).forEach(ahead::add);
        }
        assertThat(wrong).isEmpty();
        assertThat(kinds).hasSizeGreaterThan(60);
        assertThat(browsing.faults()).isEmpty();
    }

    /** What is open to everybody on a phone is made of the same pieces on larger screens. */
    @ParameterizedTest
    @MethodSource("largerSizes")
    void whatLivesFitsLargerScreens(Size size) {
        var page = browsing.screen(size);
        for (var path : live(page)) {
            open(page, path, size);
            assertThat(Browsing.overflow(page)).as(path).isLessThanOrEqualTo(0);
        }
        assertThat(browsing.faults()).isEmpty();
    }

    private void open(Page page, String path, Size size) {
        page.navigate(demo.url() + path);
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        Browsing.keep(page, "page" + path.replaceAll("[^a-z0-9]+", "-") + "-" + size);
    }

    @Test
    void whatThePolicyRefusesIsHeard() {
        try (var refused = Browsing.overPlainHttp()) {
            var page = refused.screen(Size.PHONE);
            page.navigate(demo.url() + "/");
            assertThat(refused.faults()).isEmpty();
            page.evaluate(INLINE);
            page.waitForTimeout(0);
            assertThat(refused.faults())
                    .isNotEmpty()
                    .allMatch(fault -> fault.contains("policy") || fault.contains("Content Security Policy"));
        }
    }

    @SuppressWarnings("unchecked")
    private static List<String> links(Page page) {
        return (List<String>) page.evaluate(LINKS);
    }

    /** Of pages that are about one thing each, and differ in its number, one is as good as the other. */
    private static String kind(String link) {
        return link.replaceFirst("[?#].*", "").replaceAll("[0-9]+", "N");
    }

    /** Every screen that lives: the places, then heads. */
    private List<String> live(Page page) {
        page.navigate(demo.url() + "/");
        var heads = page.locator(".row a.open").all();
        var chairs = CHAIRS.stream().map(chair -> heads.get(chair - 1).getAttribute("href"));
        return Stream.concat(PLACES.stream(), chairs).toList();
    }

    @Test
    void theKeyboardReachesEverythingOnAPhone() {
        theKeyboardReachesEverythingAndIsSeen(Size.PHONE);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("largerSizes")
    void theKeyboardReachesEverythingOnLargerScreens(Size size) {
        theKeyboardReachesEverythingAndIsSeen(size);
    }

    /** Every place that takes the keyboard is reached, shows it, and none keeps it. */
    private void theKeyboardReachesEverythingAndIsSeen(Size size) {
        var page = browsing.screen(size);
        var live = Stream.of("/", "/basins", "/pocket", "/lead", live(page).get(PLACES.size() + 1));
        // The desk has the same pieces at every size, and many.
        var paths = size == Size.PHONE ? Stream.concat(live, Stream.of("/desk")) : live;
        for (var path : paths.toList()) {
            var reached = walked(page, path);
            // Counted afterwards: the first key is also the touch that sound waits for, and the page then says so.
            assertThat(reached).as(path).doesNotContain("unseen").hasSize(reachable(page));
        }
    }

    /** A walk; another one where something fell due meanwhile, and what was drawn anew was come to twice or not at all. */
    private List<String> walked(Page page, String path) {
        for (var walks = 1; ; walks++) {
            page.navigate(demo.url() + path);
            var before = drawn(page);
            var reached = reached(page);
            if (walks == MOST_WALKS
                    || reached.size() == reachable(page)
                    || drawn(page).equals(before)) {
                return reached;
            }
        }
    }

    /** Which pieces of which numbers the page shows. */
    private static String drawn(Page page) {
        return (String)
                page.evaluate("() => [...document.querySelectorAll('[data-n]')].map(one => one.dataset.n).join()");
    }

    /** What the keyboard comes to, one after another, until it gets out of the page or round to its beginning. */
    private static List<String> reached(Page page) {
        var reached = new ArrayList<String>();
        var first = tab(page);
        for (var at = first; !at.equals("nothing") && reached.size() < MOST_STEPS; at = tab(page)) {
            if (at.equals(first) && !reached.isEmpty()) {
                return reached;
            }
            if (!at.equals("still inside")) {
                reached.add(at);
            }
        }
        return reached;
    }

    private static String tab(Page page) {
        page.keyboard().press("Tab");
        return (String) page.evaluate(FOCUSED);
    }

    private static int reachable(Page page) {
        return ((Number) page.evaluate(
                        "() => [...document.querySelectorAll('a[href], button, summary, input, [tabindex=\"0\"]')]"
                                + ".filter(one => one.type !== 'hidden' && one.getClientRects().length"
                                + " && !one.closest('details:not([open]) > :not(summary)')).length"))
                .intValue();
    }

    private static final int MOST_WALKS = 3;

    /** A page that keeps the keyboard would let the walk go on for ever. */
    private static final int MOST_STEPS = 500;

    /** What has the keyboard, "unseen" where that does not show; a date takes it for several keys. */
    private static final String FOCUSED =
            "() => { const one = document.activeElement; if (!one || one === document.body) return 'nothing';"
                    + " const drawn = [getComputedStyle(one), getComputedStyle(one, '::after')]"
                    + ".some(style => style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2);"
                    + " if (!drawn) return 'unseen'; if (window.keyboardAt === one && one.type === 'date') return 'still inside';"
                    + " window.keyboardAt = one; return one.tagName + one.textContent.trim(); }";
}
