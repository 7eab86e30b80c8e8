package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.demo.DemoHere;

/** Whoever follows a link comes to a page: every link of every page of a busy floor is followed. */
class LinksIT {
    private static final Pattern LINK = Pattern.compile("<a [^>]*href=\"(/[^\"#]*)\"");
    private static final int MANY = 3_000;

    private final HttpClient http = HttpClient.newHttpClient();
    private final Set<String> seen = new LinkedHashSet<>();
    private final Map<String, String> broken = new LinkedHashMap<>();

    @TempDir
    private Path folder = Path.of("");

    @Test
    void everyLinkLeadsToAPage() throws Exception {
        try (var demo = DemoHere.in(folder.resolve("data"))) {
            var ahead = new ArrayDeque<String>();
            follow("/", "/", ahead);
            while (!ahead.isEmpty() && seen.size() < MANY) {
                open(demo.url(), ahead.remove(), ahead);
            }
        }
        assertThat(broken).as("link, and what it answered on which page").isEmpty();
        assertThat(seen)
                .hasSizeBetween(100, MANY - 1)
                .anyMatch(link -> link.startsWith("/bells/shelve?"))
                .contains("/lead", "/look-ins", "/day", "/device", "/policy");
    }

    private void open(String server, String link, ArrayDeque<String> ahead) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(URI.create(server + link))
                .header("Accept", "text/html")
                .build();
        var answer = http.send(request, BodyHandlers.ofString());
        if (answer.statusCode() >= 400) {
            broken.put(link, String.valueOf(answer.statusCode()));
        }
        var links = LINK.matcher(answer.body());
        while (links.find()) {
            follow(links.group(1).replace("&amp;", "&"), link, ahead);
        }
    }

    /** Days before today go on for ever, so of each page that shows days only today's is followed. */
    private void follow(String link, String from, ArrayDeque<String> ahead) {
        var isAnotherDay = link.contains("day=") && from.contains("day=");
        if (!isAnotherDay && seen.add(link)) {
            ahead.add(link);
        }
    }
}
