package rinsebell.app.asset;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.app.http.RawHttp;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.web.Asset;
import rinsebell.web.Assets;

/** Style, scripts and fonts as a browser loads them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AssetRoutesTest {

    private final Assets assets = Assets.under(AssetRoutes.PREFIX);
    private final ServerUnderTest server = new ServerUnderTest(List.of(new AssetRoutes(assets)));

    @AfterAll
    void close() {
        server.close();
    }

    @Test
    void everyFileIsServedWholeAndMayBeKeptForGood() {
        for (Map.Entry<String, Asset> file : assets.all().entrySet()) {
            Response answer = ask().get(file.getKey());
            assertThat(answer.statusCode()).as(file.getKey()).isEqualTo(200);
            assertThat(answer.asByteArray())
                    .as(file.getKey())
                    .isEqualTo(file.getValue().bytes());
            assertThat(answer.header("Content-Type").replace(" ", ""))
                    .isEqualToIgnoringCase(file.getValue().type().replace(" ", ""));
            assertThat(answer.headers().getValues("Cache-Control"))
                    .containsExactly("public, max-age=31536000, immutable");
            assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(answer.header("Content-Security-Policy")).startsWith("default-src 'none'");
            assertThat(answer.header("Set-Cookie")).isNull();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "rinsebell.css, text/css",
        "main.js, text/javascript",
        "htmx.js, text/javascript",
        "icon.svg, image/svg+xml",
        "fonts/b612-latin-400-normal.woff2, font/woff2",
        "fonts/B612-OFL.txt, text/plain"
    })
    void theTypeIsWhatABrowserTakes(String file, String type) {
        ask().get(assets.url(file)).then().statusCode(200).header("Content-Type", containsString(type));
    }

    /** A browser asks for it anew each time, and takes another one for an update. */
    @Test
    void theServiceWorkerStandsAtTheRootAndNamesEveryFile() {
        Response answer = ask().get("/worker.js");
        assertThat(answer.header("Content-Type")).startsWith("text/javascript");
        assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
        assertThat(answer.asString())
                .startsWith("const ASSETS = [")
                .contains(assets.all().keySet());
    }

    @Test
    void whatABrowserHasIsNotSentAgain() {
        String url = assets.url("main.js");
        String tag = ask().get(url).header("ETag");
        for (String known : List.of(tag, "W/" + tag, "\"other\", " + tag, "*")) {
            Response answer = ask().header("If-None-Match", known).get(url);
            assertThat(answer.statusCode()).as(known).isEqualTo(304);
            assertThat(answer.asByteArray()).isEmpty();
            assertThat(answer.header("ETag")).isEqualTo(tag);
            assertThat(answer.header("Cache-Control")).contains("immutable");
            assertThat(answer.header("Content-Security-Policy")).startsWith("default-src 'none'");
        }
        ask().header("If-None-Match", "\"other\"").get(url).then().statusCode(200);
        assertThat(ask().get(assets.url("rinsebell.css")).header("ETag")).isNotEqualTo(tag);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/assets",
                "/assets/",
                "/assets/main.js",
                "/assets/0000000000000000/main.js",
                "ROOT",
                "ROOTfonts/",
                "ROOTmissing.js",
                "ROOTmain.js/",
                "ROOTMAIN.JS",
                "ROOTcss/base.css",
                "ROOT..",
                "ROOTwords.properties"
            })
    void nothingElseLiesThere(String path) {
        ask().get(path.replace("ROOT", root()))
                .then()
                .statusCode(equalTo(404))
                .header("Cache-Control", "no-store")
                .contentType("text/html");
    }

    /** No way out of the folder, however it is written. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "ROOT../../../../../etc/passwd",
                "ROOT..%2f..%2f..%2fetc%2fpasswd",
                "ROOT%2e%2e/%2e%2e/words.properties",
                "ROOT..;/words.properties",
                "ROOT....//words.properties",
                "ROOT..\\words.properties",
                "ROOT/words.properties",
                "ROOT%00main.js",
                "ROOTmain.js%00.css",
                "ROOT%252e%252e/words.properties",
                "//etc/passwd",
                "ROOTmain.js;jsessionid=1"
            })
    void noAddressLeavesTheFolder(String path) throws Exception {
        String answer = RawHttp.ask(
                server.port(),
                "GET " + path.replace("ROOT", root()) + " HTTP/1.1\r\nHost: localhost:" + server.port()
                        + "\r\nConnection: close\r\n\r\n");
        assertThat(RawHttp.status(answer)).as(answer).isIn(400, 404);
        assertThat(answer).doesNotContain("root:", "problem.bug");
    }

    private String root() {
        return assets.url("main.js").replace("main.js", "");
    }

    private RequestSpecification ask() {
        return given(server.request()).redirects().follow(false);
    }
}
