package rinsebell.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The browser that is installed on this machine. */
final class Chromium implements AutoCloseable {
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
            WITHOUT);

    /** Started for the first test that wants it, and gone with this process: each costs as much as ten pages. */
    private static @Nullable Chromium usual;

    private final Playwright playwright;
    final Browser browser;

    private Chromium(Playwright playwright, Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    static Chromium start() {
        var already = usual;
        var now = already == null ? start(List.of()) : already;
        usual = now;
        return now;
    }

    /** @param usual switches with which tests are usually run, and this one is not */
    static Chromium start(List<String> usual) {
        var playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        var options = new BrowserType.LaunchOptions()
                .setExecutablePath(installed())
                .setArgs(QUIET)
                .setIgnoreDefaultArgs(usual);
        return new Chromium(playwright, playwright.chromium().launch(options));
    }

    /** A page on a device of its own, on which nothing moves: what flashes is drawn anew sixty times a second. */
    Page page() {
        return browser.newPage(new Browser.NewPageOptions().setReducedMotion(ReducedMotion.REDUCE));
    }

    /** A device on whose pages nothing moves. */
    BrowserContext device() {
        return browser.newContext(new Browser.NewContextOptions().setReducedMotion(ReducedMotion.REDUCE));
    }

    private static Path installed() {
        return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no Chromium in /usr/bin: install the package chromium"));
    }

    /** Nothing is answered for the page any more: an answer of the test to a page that is just going would be a fault of its own. */
    static void close(Page page) {
        page.unrouteAll();
        page.close();
    }

    /** @see #close(Page) */
    static void close(BrowserContext device) {
        device.pages().forEach(Page::unrouteAll);
        device.unrouteAll();
        device.close();
    }

    /** What is started for all tests is only tidied up. */
    @Override
    public void close() {
        List.copyOf(browser.contexts()).forEach(BrowserContext::close);
        if (this != usual) {
            browser.close();
            playwright.close();
        }
    }
}
