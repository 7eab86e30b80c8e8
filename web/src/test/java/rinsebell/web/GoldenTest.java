package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sample page, letter by letter. After a change that is meant, run with {@code -Dgolden.write=true} and read the
 * difference before it is committed.
 */
class GoldenTest {
    private static final Path FOLDER = Path.of("src/test/resources/rinsebell/web/golden");
    private static final Pattern HASH = Pattern.compile("/assets/[0-9a-f]{16}/");
    private static final Assets ASSETS = Assets.under("/assets");

    @ParameterizedTest
    @MethodSource("names")
    void rendersAsBefore(String name) throws IOException {
        var html = HASH.matcher(render(name)).replaceAll("/assets/HASH/");
        var golden = FOLDER.resolve(name + ".html");
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(golden, html);
        }
        assertThat(html).isEqualTo(Files.readString(golden));
    }

    /** The Content-Security-Policy would block these, so they must not be there to be blocked. */
    @ParameterizedTest
    @MethodSource("names")
    void needsNothingThatThePolicyForbids(String name) {
        assertThat(render(name))
                .doesNotContainPattern("\\sstyle=")
                .doesNotContainPattern("\\son[a-z]+=")
                .doesNotContainPattern("<script(?![^>]* src=)")
                .doesNotContain("javascript:", "<style");
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyIdIsThereOnce(String name) {
        var ids = Pattern.compile("\\sid=\"([^\"]*)\"")
                .matcher(render(name))
                .results()
                .map(found -> found.group(1));
        assertThat(ids).doesNotHaveDuplicates().isNotEmpty().noneMatch(String::isBlank);
    }

    static Stream<String> names() {
        return Preview.samples().keySet().stream();
    }

    private static String render(String name) {
        return new Pages().render(Objects.requireNonNull(Preview.samples().get(name)), Samples.screen(ASSETS));
    }
}
