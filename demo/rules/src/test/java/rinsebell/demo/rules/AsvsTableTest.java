package rinsebell.demo.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables of OWASP ASVS 5.0 in the notes: whole, and each test that they name is there. */
class AsvsTableTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+\\.\\d+\\.\\d+");
    private static final Pattern TEST = Pattern.compile("\\w+(Test|IT)\\.\\w+");
    private static final int LEVEL_1 = 70;
    private static final int LEVEL_2 = 183;

    /** What the house excepts of level 1, and nothing else. */
    private static final Pattern EXCEPTED = Pattern.compile("\\((short PINs|TLS on a LAN)\\) .{20,}");

    /** By a test that stands beside this house yet; it counts as not passed. */
    private static final String TO_COME = "to come";

    private static final Set<String> STATES = Set.of("passed", "not applicable", "exception", TO_COME);

    private record Row(String number, int level, String what, String state, String how) {
        List<String> tests() {
            return Notes.names(how).stream()
                    .filter(name -> TEST.matcher(name).matches())
                    .toList();
        }
    }

    private static List<Row> rows() {
        return Notes.rows()
                .filter(cells -> NUMBER.matcher(cells.get(0)).matches())
                .map(cells ->
                        new Row(cells.get(0), Integer.parseInt(cells.get(1)), cells.get(2), cells.get(3), cells.get(4)))
                .toList();
    }

    private static long count(int level, String... states) {
        return rows().stream()
                .filter(row -> row.level == level && Set.of(states).contains(row.state))
                .count();
    }

    /** Numbers and levels: OWASP_Application_Security_Verification_Standard_5.0.0_en.csv. */
    private static Map<String, Integer> standard() throws IOException {
        try (var in = Objects.requireNonNull(AsvsTableTest.class.getResourceAsStream("asvs-5.0.0.txt"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(" "))
                    .collect(Collectors.toMap(
                            parts -> parts[0], parts -> Integer.parseInt(parts[1]), (a, b) -> a, LinkedHashMap::new));
        }
    }

    @Test
    void everyNumberOfTheStandardIsThereOnce() throws IOException {
        var standard = standard();
        assertThat(standard.values()).filteredOn(level -> level == 1).hasSize(LEVEL_1);
        assertThat(standard.values()).filteredOn(level -> level == 2).hasSize(LEVEL_2);
        assertThat(rows()).extracting(Row::number).containsExactlyElementsOf(standard.keySet());
        rows().forEach(row -> assertThat(row.level).as(row.number).isEqualTo(standard.get(row.number)));
    }

    @Test
    void eachSaysWhatItIsAboutAndHowItStands() {
        assertThat(rows()).isNotEmpty();
        rows().forEach(row -> {
            assertThat(row.state).as(row.number).isIn(STATES);
            assertThat(row.what.split(" ")).as(row.number).hasSizeBetween(3, 8);
            assertThat(row.how).as(row.number).isNotBlank();
        });
    }

    @Test
    void whatIsPassedNamesATestAndEveryTestIsThere() {
        var tests = tests();
        rows().stream().filter(row -> !row.state.equals(TO_COME)).forEach(row -> {
            assertThat(row.tests()).as(row.number).allMatch(tests::contains);
            assertThat(row.state.equals("passed") && row.tests().isEmpty())
                    .as("%s is passed by nothing", row.number)
                    .isFalse();
        });
    }

    /** Once all tests of a row are there, it is passed. */
    @Test
    void whatHasComeIsNoLongerToCome() {
        var tests = tests();
        assertThat(rows())
                .filteredOn(row -> row.state.equals(TO_COME))
                .allMatch(row -> !tests.containsAll(row.tests()) || row.tests().isEmpty());
    }

    private static Set<String> tests() {
        return House.TESTS.stream()
                .flatMap(type -> type.getMethods().stream())
                .filter(AsvsTableTest::isTest)
                .flatMap(method -> names(method.getOwner()).map(name -> name + "." + method.getName()))
                .collect(Collectors.toSet());
    }

    private static boolean isTest(JavaMethod method) {
        return method.isAnnotatedWith("org.junit.jupiter.api.Test")
                || method.isAnnotatedWith("org.junit.jupiter.params.ParameterizedTest");
    }

    /** Of its own, and of those that inherit from it. */
    private static Stream<String> names(JavaClass type) {
        return Stream.concat(Stream.of(type), type.getAllSubclasses().stream()).map(JavaClass::getSimpleName);
    }

    @Test
    void levelOneIsPassedButForWhatTheHouseExcepts() {
        assertThat(count(1, "passed", "not applicable", "exception")).isEqualTo(LEVEL_1);
        assertThat(rows())
                .filteredOn(row -> row.level == 1 && row.state.equals("exception"))
                .allSatisfy(row -> assertThat(row.how).as(row.number).matches(EXCEPTED));
    }

    @Test
    void nineTenthsOfLevelTwoArePassedOrNotApplicable() {
        assertThat(count(2, "passed", "not applicable") * 10).isGreaterThanOrEqualTo(LEVEL_2 * 9L);
    }
}
