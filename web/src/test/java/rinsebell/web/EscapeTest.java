package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.web.Drawing.panning;

import org.junit.jupiter.api.Test;
import rinsebell.web.view.Due;
import rinsebell.web.view.Urgency;

class EscapeTest {
    @Test
    void namesAreTextWhateverTheyHold() {
        var evil = "<img src=x onerror=alert(1)>\" onclick=\"alert(2)";
        var row = Samples.chair(1, evil, evil, new Due(evil, null, Urgency.CALM, evil), panning(evil), "/chairs/1");
        var html = new Pages().render(row, Samples.screen(Assets.under("/assets")));
        assertThat(html)
                .doesNotContain("<img")
                .contains("aria-label=\"&lt;img src=x onerror=alert(1)>&#34; onclick=&#34;alert(2)\"");
    }

    @Test
    void aFragmentIsOneRootElementWithItsId() {
        var row = Samples.chairs().get(0);
        var html =
                new Pages().render(row, Samples.screen(Assets.under("/assets"))).strip();
        assertThat(html)
                .startsWith("<li class=\"row calm\" id=\"row-1\" data-n=\"k3f9-1041\"")
                .endsWith("</li>");
        assertThat(html.split("<li ", -1)).hasSize(2);
    }
}
