package rinsebell.demo.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A real browser that notes everything that goes wrong on a page. */
final class Browsing implements AutoCloseable {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path PICTURES = Path.of("target", "screenshots");
    /** The browser says of every answer from 400 on that it could not be loaded; those are judged by their status. */
    private static final String NOT_LOADED = "Failed to load resource";

    /** A page that was opened by the test and by nobody's touch may not sound, and asks for it all the same. */
    private static final String UNTOUCHED = "The AudioContext was not allowed to start";

    /** By which other machines know the server; browsers here find it on this one. */
    static final String NAME = "salon.test";

    private static final double PATIENCE_MILLIS = 10_000;

    /** What a window opens around each page for nobody; then Playwright's own list, of which this takes the place. */
    private static final String WITHOUT =
            "--disable-features=WebUIOmniboxAimPopup,WebUIOmniboxPopup,WebUIOmniboxFullPopup,"
                    + "AvoidUnnecessaryBeforeUnloadCheckSync,BoundaryEventDispatchTracksNodeRemoval,"
                    + "DestroyProfileOnBrowserClose,DialMediaRouteProvider,GlobalMediaControls,HttpsUpgrades,LensOverlay,"
                    + "MediaRouter,PaintHolding,ThirdPartyStoragePartitioning,BlockOriginHeaderModificationOnRedirect,"
                    + "Translate,OptimizationHints";

    private static final List<String> QUIET = List.of(
            "--no-sandbox",
            "--disable-gpu",
            // Pages are painted without a graphics library in between.
            "--disable-software-rasterizer",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--hide-scrollbars",
            // A name of a network that has no other way to know it.
            "--host-resolver-rules=MAP " + NAME + " 127.0.0.1",
            WITHOUT);

    /** The browser tells the page of whatever the policy refuses (CSP Level 3, section 5), and some of it nowhere else. */
    private static final String TELLING_OF_POLICY = "addEventListener('securitypolicyviolation', refused =>"
            + " console.error('policy', refused.violatedDirective, refused.blockedURI), true)";

    private static final String WITHOUT_WORKERS =
            "Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined })";

    /** Started for the first test that wants it, and gone with this process: each costs as much as ten pages. */
    private static @Nullable Started usual;

    private final Started started;
    private final List<BrowserContext> devices = new ArrayList<>();
    private final String axe;
    private final List<String> faults = new ArrayList<>();
    private final boolean workers;

    private record Started(Playwright playwright, Browser browser) implements AutoCloseable {
        @Override
        public void close() {
            browser.close();
            playwright.close();
        }
    }

    /** On the machine itself, or over HTTPS: pages are kept by a service worker. */
    Browsing() {
        this(usual(), true);
    }

    /** The browser of whoever lives there. */
    Browsing(TrustingHome home) {
        this(started(Map.of("HOME", home.folder().toString())), true);
    }

    /** As over plain HTTP on a LAN, where browsers have no service workers: nothing is kept, and nothing fetched to keep. */
    static Browsing overPlainHttp() {
        return new Browsing(usual(), false);
    }

    private Browsing(Started started, boolean workers) {
        this.started = started;
        this.workers = workers;
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MILLIS);
        axe = axe();
    }

    private static Started usual() {
        var already = usual;
        var now = already == null ? started(Map.of()) : already;
        usual = now;
        return now;
    }

    /** @param changed of the environment that the test itself runs in */
    private static Started started(Map<String, String> changed) {
        var environment = new HashMap<>(System.getenv());
        environment.putAll(changed);
        var playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        var browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setHeadless(true)
                        .setEnv(environment)
                        .setArgs(QUIET));
        return new Started(playwright, browser);
    }

    private static String axe() {
        try (var in = Browsing.class.getResourceAsStream("/axe.min.js")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A screen of that size, a device of its own; what goes wrong on it is noted. */
    Page screen(Size size) {
        return screen(size, true);
    }

    Page screen(Size size, boolean script) {
        var device = device(still(size).setJavaScriptEnabled(script));
        if (!workers) {
            device.addInitScript(WITHOUT_WORKERS);
        }
        device.addInitScript(TELLING_OF_POLICY);
        var page = device.newPage();
        page.setDefaultTimeout(PATIENCE_MILLIS);
        page.onConsoleMessage(this::note);
        page.onPageError(error -> faults.add(page.url() + " script: " + error));
        page.onResponse(this::note);
        return page;
    }

    /** A device of its own with as many pages as one opens. */
    BrowserContext device(Size size) {
        return device(still(size));
    }

    private BrowserContext device(Browser.NewContextOptions options) {
        var device = started.browser.newContext(options);
        devices.add(device);
        return device;
    }

    /** Nothing moves on it: what flashes is drawn anew sixty times a second on every page that is open. */
    private static Browser.NewContextOptions still(Size size) {
        return new Browser.NewContextOptions()
                .setViewportSize(size.width(), size.height())
                .setReducedMotion(ReducedMotion.REDUCE);
    }

    /** Puts all screens away: one that nobody needs any more goes on hearing, drawing and ringing. */
    void putAway() {
        devices.forEach(BrowserContext::close);
        devices.clear();
    }

    /** Refusals by the content security policy are console errors too. */
    private void note(ConsoleMessage message) {
        var loud = message.type().equals("error") || message.type().equals("warning");
        var expected = message.text().startsWith(NOT_LOADED) || message.text().startsWith(UNTOUCHED);
        if (loud && !expected) {
            faults.add(message.location() + " " + message.type() + ": " + message.text());
        }
    }

    /** A refusal of what must not be done is an answer: 409. */
    private void note(Response response) {
        if (response.status() >= 400 && response.status() != 409) {
            faults.add(response.status() + ": " + response.url());
        }
    }

    List<String> faults() {
        return List.copyOf(faults);
    }

    /** A picture for whoever looks at it: {@code -Drinsebell.pictures=true} takes them. */
    static void keep(Page page, String picture) {
        if (Boolean.getBoolean("rinsebell.pictures")) {
            page.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve(picture + ".png")));
        }
    }

    /** How far the page is wider than its screen, in CSS pixels; zero or less for not. */
    static int overflow(Page page) {
        return ((Number) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .intValue();
    }

    /** What axe finds on the page, each with its places. */
    @SuppressWarnings("unchecked")
    List<String> violations(Page page) {
        page.evaluate(axe + "; 0");
        return (List<String>) page.evaluate("() => axe.run({resultTypes: ['violations']}).then(found => "
                + "found.violations.map(one => `${one.id}: ${one.nodes.map(node => node.html).join(' | ')}`))");
    }

    @Override
    public void close() {
        putAway();
        if (started != usual) {
            started.close();
        }
    }
}
