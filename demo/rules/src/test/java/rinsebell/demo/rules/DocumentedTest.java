package rinsebell.demo.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the notes say about security is so (OWASP ASVS 5.0 asks for most of it to be written down). */
class DocumentedTest {
    private static final Pattern TOUCHES_KEYS =
            Pattern.compile("(?m)^import (java\\.security|javax\\.crypto|javax\\.net\\.ssl|org\\.bouncycastle)\\.");

    private static final Pattern FOR_EVERYBODY = Pattern.compile("Matter\\.OPEN\\)");
    private static final Pattern TABLE = Pattern.compile("(?i)create table (\\w+)");
    private static final Pattern LOOKED_AT = Pattern.compile("Looked at: (\\d{4}-\\d\\d-\\d\\d)\\.");
    private static final Pattern MADE = Pattern.compile("<project\\.build\\.outputTimestamp>(\\d{4}-\\d\\d-\\d\\d)T");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ways in",
                "Who sees which fields",
                "Limits",
                "Keys and hashes",
                "What is kept",
                "What is logged",
                "What it talks to",
                "Parts of others"
            })
    void everySectionIsThere(String heading) {
        assertThat(Notes.section(heading)).hasSizeGreaterThan(200);
    }

    @Test
    void everyLimitIsWhatTheCodeSays() {
        var rows = Notes.rows("Limits");
        assertThat(rows).hasSizeGreaterThan(25);
        rows.forEach(row -> {
            var constant = Notes.names(row.get(0)).get(0).split("\\.");
            var said = " " + constant[1] + " = " + Notes.names(row.get(1)).get(0) + ";";
            assertThat(source(constant[0]).contains(said)).as(row.get(0) + said).isTrue();
            assertThat(row.get(2)).as(row.get(0)).isNotEmpty();
        });
    }

    private static String source(String type) {
        var found = Notes.sources("/" + type + ".java").map(Notes::text).collect(Collectors.joining());
        assertThat(found).as(type).isNotEmpty();
        return found;
    }

    @Test
    void whateverTouchesAKeyIsInTheInventory() {
        var listed = named("Keys and hashes");
        assertThat(listed).isEqualTo(sourcesWith(TOUCHES_KEYS));
    }

    /** Classes with routes for everybody who reaches the server. */
    @Test
    void everyWayInIsWrittenDown() {
        assertThat(named("Ways in")).isEqualTo(sourcesWith(FOR_EVERYBODY));
    }

    private static Set<String> named(String heading) {
        return Notes.rows(heading).stream()
                .flatMap(row -> Notes.names(row.get(0)).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> sourcesWith(Pattern pattern) {
        return Notes.sources(".java")
                .filter(file -> pattern.matcher(Notes.text(file)).find())
                .map(file -> String.valueOf(file.getFileName()).replace(".java", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyTableHasItsClass() {
        var tables = Notes.sources(".sql")
                .flatMap(file -> TABLE.matcher(Notes.text(file)).results())
                .map(found -> found.group(1))
                .toList();
        assertThat(tables).hasSizeGreaterThan(15);
        assertThat(named("What is kept")).containsAll(tables).contains("keyring.json", "tls", "copies");
        Notes.rows("What is kept").forEach(row -> {
            assertThat(row.get(1)).as(row.get(0)).matches("(open|salon|private|as )(?s:.*)");
            assertThat(row.get(2)).as(row.get(0)).isNotEmpty();
        });
    }

    /** What is built now was looked at no longer before than a hole may stay open; days are the notes' own. */
    @Test
    void partsWereLookedAtBeforeThisRelease() {
        var made = date(MADE, Notes.text(House.TOP.resolve("pom.xml")));
        var looked = date(LOOKED_AT, Notes.section("Parts of others"));
        assertThat(looked).isAfterOrEqualTo(made.minusDays(30));
        assertThat(Notes.section("Parts of others")).contains("within 7 days", "within 30");
    }

    private static LocalDate date(Pattern pattern, String text) {
        var found = pattern.matcher(text);
        assertThat(found.find()).as(pattern.pattern()).isTrue();
        return LocalDate.parse(found.group(1));
    }

    /** Names are of the code: a test or class that is called otherwise now would be promised to nobody. */
    @Test
    void whatTheSecurityNotesNameIsThere() {
        for (var heading :
                List.of("Security", "Limits", "Keys and hashes", "Ways in", "What is kept", "Parts of others")) {
            Notes.names(Notes.section(heading)).stream()
                    .filter(name -> name.matches("[A-Z][a-zA-Z]+(Test|IT)?(\\.[a-zA-Z_]+)?"))
                    .map(name -> name.split("\\.")[0])
                    .forEach(name -> assertThat(House.PROGRAM.stream()
                                            .anyMatch(
                                                    type -> type.getSimpleName().equals(name))
                                    || House.TESTS.stream()
                                            .anyMatch(
                                                    type -> type.getSimpleName().equals(name)))
                            .as("%s in %s", name, heading)
                            .isTrue());
        }
    }
}
