package rinsebell.demo.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What compiled classes no longer show: SQL, scripts, templates, and the names of algorithms. */
class SafeSourcesTest {
    /** A statement as far as its first argument goes: a literal, or a constant. */
    private static final Pattern SQL = Pattern.compile(
            "\\.(createQuery|createUpdate|prepareBatch|createScript|createCall|prepareStatement|execute|executeQuery)"
                    + "\\(\\s*(\"\"\".*?\"\"\"|\"[^\"]*\"|[^)\\s]+)(\\.formatted\\((\\w+)\\))?\\s*([^\\s])",
            Pattern.DOTALL);

    /** Columns of a table, written once; and tables by the names that the database itself gives. */
    private static final Set<String> OUR_OWN = Set.of("COLUMNS", "table");

    private static final Pattern ALGORITHM = Pattern.compile(
            "(?:(?:MessageDigest|Signature|KeyFactory|KeyPairGenerator|KeyStore|CertificateFactory|Mac|Cipher|SSLContext"
                    + "|KeyAgreement|SecretKeyFactory|SecureRandom)\\.getInstance|JcaContentSignerBuilder|ECGenParameterSpec)"
                    + "\\((\"[^\"]*\"|\\w+)");

    /** A pattern, or a text with places in it, that does not begin as a literal or the name of a constant. */
    private static final Pattern MADE_OF_SOMETHING =
            Pattern.compile("Pattern\\.compile\\(\\s*+(?![\"A-Z])|String\\.format\\((?:Locale\\.\\w+, )?(?![\"A-Z])"
                    + "|[a-z0-9)]\\.formatted\\(");

    /** FIPS 180-4, FIPS 186-5; Ed25519 and RSA only in certificates that a salon has from elsewhere. */
    private static final Set<String> APPROVED = Set.of(
            "\"SHA-256\"",
            "\"SHA256withECDSA\"",
            "\"EC\"",
            "\"secp256r1\"",
            "\"PKCS12\"",
            "\"X.509\"",
            "kind",
            "signing");

    /** What makes HTML of a text: in these scripts alone, and of what this server has answered. */
    private static final Set<String> DRAW = Set.of("feed.js", "kept.js", "press.js");

    @Test
    void noStatementIsPutTogetherFromWhatWasTyped() {
        List<MatchResult> statements = Notes.files(House.TOP.resolve("db/src/main"), ".java")
                .flatMap(file -> SQL.matcher(Notes.text(file)).results())
                .filter(found -> !found.group(2).equals(""))
                .toList();
        assertThat(statements).hasSizeGreaterThan(60).allSatisfy(one -> {
            assertThat(one.group(2)).as(one.group()).matches("(?s)\".*|[A-Z_]+");
            assertThat(one.group(5)).as(one.group()).isNotEqualTo("+");
            assertThat(one.group(4) == null || OUR_OWN.contains(one.group(4)))
                    .as(one.group())
                    .isTrue();
        });
    }

    @Test
    void noPatternAndNoFormatIsMadeOfWhatWasTyped() {
        assertThat(Notes.sources(".java"))
                .filteredOn(file -> MADE_OF_SOMETHING.matcher(Notes.text(file)).find())
                .isEmpty();
    }

    @Test
    void onlyApprovedAlgorithmsAreNamed() {
        Set<String> named = new TreeSet<>();
        Notes.sources(".java")
                .filter(file -> Notes.text(file).contains("java.security")
                        || Notes.text(file).contains("javax.net.ssl"))
                .flatMap(file -> ALGORITHM.matcher(Notes.text(file)).results())
                .forEach(found -> named.add(found.group(1)));
        assertThat(named).contains("\"SHA-256\"", "\"secp256r1\"").isSubsetOf(APPROVED);
    }

    @Test
    void noScriptRunsWhatItWasGiven() {
        assertThat(Notes.sources(".js")).hasSizeGreaterThan(20).allSatisfy(file -> {
            assertThat(Notes.text(file))
                    .as("%s", file)
                    .doesNotContainPattern("\\beval\\(|\\bFunction\\(|document\\.write|insertAdjacentHTML|\\bimport\\(")
                    .doesNotContainPattern("set(Timeout|Interval)\\(\\s*[\"'`]")
                    .doesNotContain("javascript:");
            if (!DRAW.contains(String.valueOf(file.getFileName()))) {
                assertThat(Notes.text(file)).as("%s", file).doesNotContainPattern("\\b(inner|outer)HTML\\s*=[^=]");
            }
        });
    }

    /** A page hears its own worker and its own tabs (BroadcastChannel), and no window. */
    @Test
    void noPageListensToAnotherWindow() {
        assertThat(Notes.sources(".js"))
                .filteredOn(file -> !file.endsWith("worker.js"))
                .allSatisfy(file -> assertThat(Notes.text(file))
                        .as("%s", file)
                        .doesNotContainPattern("(?<!\\.)addEventListener\\(\\s*\"message\"")
                        .doesNotContainPattern(
                                "\\b(window|self|globalThis)\\??\\.(addEventListener|onmessage|opener)"));
    }

    @Test
    void pagesAreMadeOfWhatBrowsersStillKnow() {
        assertThat(Notes.sources(".jte"))
                .hasSizeGreaterThan(40)
                .allSatisfy(file -> assertThat(Notes.text(file))
                        .as("%s", file)
                        .doesNotContainPattern("<(object|embed|applet|iframe|frame|portal)\\b")
                        .doesNotContain("$unsafe"));
    }

    /** Keys that are names would reach an object's prototype. */
    @Test
    void noScriptKeepsByNamesThatItWasGiven() {
        assertThat(Notes.sources(".js"))
                .allSatisfy(file -> assertThat(Notes.text(file))
                        .as("%s", file)
                        .doesNotContain("__proto__", "constructor[", ".prototype"));
    }
}
