package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page of a busy floor, one of each kind, opened in a browser: the content security policy refuses nothing of ours. */
class PolicyIT {
    private static final String LINKS = "() => [...document.querySelectorAll('a[href^=\"/\"]:not([download])')]"
            + ".map(link => link.getAttribute('href')).filter(link => !link.startsWith('/api/'))";

    /** What no policy of ours lets in. */
    private static final String INLINE =
            "() => document.head.append(Object.assign(document.createElement('script'), {textContent: '1'}))";

    private final Map<String, String> kinds = new LinkedHashMap<>();
    private final ArrayDeque<String> ahead = new ArrayDeque<>();

    @Test
    void noPageNeedsWhatThePolicyRefuses(@TempDir Path folder) throws Exception {
        try (var demo = RunningDemo.in(folder.resolve("data"));
                var browsing = Browsing.overPlainHttp()) {
            var page = browsing.screen(Size.PHONE);
            List.of(
                            "/",
                            "/setup",
                            "/lead",
                            "/use",
                            "/me",
                            "/rights",
                            "/pins",
                            "/devices",
                            "/join",
                            "/look-ins",
                            "/unlock")
                    .forEach(this::follow);
            while (!ahead.isEmpty()) {
                page.navigate(demo.url() + ahead.remove());
                links(page).forEach(this::follow);
            }
            assertThat(browsing.faults()).isEmpty();
            assertThat(kinds).hasSizeGreaterThan(60);
            page.navigate(demo.url() + "/nowhere");
            page.evaluate(INLINE);
            page.waitForTimeout(0);
            assertThat(browsing.faults())
                    .as("and what it refuses is heard")
                    .anyMatch(fault -> fault.contains("policy"));
        }
    }

    @SuppressWarnings("unchecked")
    private static List<String> links(Page page) {
        return (List<String>) page.evaluate(LINKS);
    }

    /** Of pages that are about one thing each, and differ in its number, one is as good as the other. */
    private void follow(String link) {
        var kind = link.replaceFirst("[?#].*", "").replaceAll("[0-9]+", "N");
        if (kinds.putIfAbsent(kind, link) == null) {
            ahead.add(link);
        }
    }
}
