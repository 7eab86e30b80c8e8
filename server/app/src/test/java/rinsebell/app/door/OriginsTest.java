package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OriginsTest {

    @ParameterizedTest
    @CsvSource({
        "http://localhost:8460,     ,            false, true",
        "http://localhost:8460,     cross-site,  false, true",
        "http://localhost,          ,            true,  false",
        "https://localhost:8460,    same-origin, true,  false",
        "http://LOCALHOST:8460,     ,            true,  false",
        "http://localhost:8460/,    ,            true,  false",
        "http://localhost:84600,    ,            true,  false",
        "http://localhost:8460.example.org, ,    true,  false",
        "http://127.0.0.1:8460,     same-origin, true,  false",
        "http://example.org,        same-origin, true,  false",
        "null,                      ,            true,  false",
        "'',                        ,            true,  false",
        ",                          same-origin, false, true",
        ",                          none,        false, true",
        ",                          same-site,   true,  false",
        ",                          cross-site,  true,  false",
        ",                          ,            true,  true",
        ",                          ,            false, false"
    })
    void letsInOnlyOurOwnPagesAndPrograms(
            @Nullable String origin, @Nullable String fetchSite, boolean pressId, boolean allowed) {
        assertThat(Origins.allow(new Origins.Said(origin, fetchSite, "cors", pressId), "http://localhost:8460"))
                .isEqualTo(allowed);
    }
}
