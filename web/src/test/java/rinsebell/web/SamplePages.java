package rinsebell.web;

import com.microsoft.playwright.Page;
import java.io.IOException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** Sample pages, served to a real browser. */
abstract class SamplePages {
    static SampleServer server;
    static Chromium chromium;

    @BeforeAll
    static void start() throws IOException {
        server = new SampleServer();
        chromium = Chromium.start();
    }

    @AfterAll
    static void stop() {
        chromium.close();
        server.close();
    }

    /** What code with one of the page's own modules at hand comes to, inside that page. */
    static Object in(Page page, String module, String code) {
        return page.evaluate(
                "async () => { const module = await import('" + server.asset(module) + "'); " + code + " }");
    }
}
