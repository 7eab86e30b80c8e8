package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sources: RFC 4180, section 2 (its own examples); OWASP, "CSV Injection", for what begins a formula. */
class CsvTest {
    @Test
    void linesAreThoseOfTheStandard() {
        assertThat(Csv.line(List.of("aaa", "bbb", "ccc"))).isEqualTo("aaa,bbb,ccc\r\n");
        assertThat(Csv.line(List.of("aaa", "b\r\nbb", "ccc"))).isEqualTo("aaa,\"b\r\nbb\",ccc\r\n");
        assertThat(Csv.line(List.of("aaa", "b\"bb", "ccc"))).isEqualTo("aaa,\"b\"\"bb\",ccc\r\n");
        assertThat(Csv.line(List.of("a,b", ""))).isEqualTo("\"a,b\",\r\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1", "＋1", "－1", "＠x"})
    void nothingIsAFormula(String text) {
        assertThat(Csv.line(List.of(text)).replaceFirst("^\"", "")).startsWith("'" + text.charAt(0));
        assertThat(Csv.line(List.of("x" + text)).replaceFirst("^\"", "")).startsWith("x");
    }
}
