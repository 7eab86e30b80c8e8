package rinsebell.app.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The tags of a page with their attributes, as a browser tells them from text: HTML Standard, 13.2.5, as far as it matters
 * here. What stands between tags is not looked at.
 */
final class Markup {
    private final String html;
    private int at;
    private final List<String> names = new ArrayList<>();
    private final List<String> values = new ArrayList<>();

    private Markup(String html) {
        this.html = html;
    }

    static Markup of(String html) {
        Markup markup = new Markup(html);
        while (markup.toNextTag()) {
            markup.tag();
        }
        return markup;
    }

    /** Of every tag and every attribute, in small letters. */
    List<String> names() {
        return names;
    }

    /** Of every attribute that has one. */
    List<String> values() {
        return values;
    }

    private boolean toNextTag() {
        at = html.indexOf('<', at) + 1;
        return at > 0 && at < html.length();
    }

    private void tag() {
        names.add(word(" \t\r\n/>"));
        while (at < html.length() && html.charAt(at) != '>') {
            if (" \t\r\n/".indexOf(html.charAt(at)) >= 0) {
                at++;
            } else {
                attribute();
            }
        }
    }

    private void attribute() {
        names.add(word(" \t\r\n/>="));
        if (at < html.length() && html.charAt(at) == '=') {
            at++;
            char quote = at < html.length() ? html.charAt(at) : ' ';
            boolean isQuoted = quote == '"' || quote == '\'';
            at += isQuoted ? 1 : 0;
            values.add(word(isQuoted ? String.valueOf(quote) : " \t\r\n>"));
            at += isQuoted ? 1 : 0;
        }
    }

    /** Up to one of these; the first sign may be any. */
    private String word(String until) {
        int from = at;
        while (at < html.length() && until.indexOf(html.charAt(at)) < 0) {
            at++;
        }
        return html.substring(from, at).toLowerCase(Locale.ROOT);
    }
}
