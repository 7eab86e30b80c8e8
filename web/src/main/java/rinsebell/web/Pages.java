package rinsebell.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import rinsebell.web.view.View;

/** Turns views into HTML with the templates that were compiled into this module. Safe for many threads. */
public final class Pages {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Pages.class.getClassLoader(), "rinsebell.web.page");

    /** The HTML of a whole page or of one fragment, which is one root element. */
    public String render(View view, Screen screen) {
        var html = new StringOutput();
        engine.render(view.template(), Map.of("screen", screen, "view", view), html);
        return html.toString();
    }
}
