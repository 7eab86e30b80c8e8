package rinsebell.db.codec;

import rinsebell.floor.product.Active;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Span;
import rinsebell.floor.product.Times;

/** The times a leaflet gives. */
final class TimesJson {

    private TimesJson() {}

    static void write(Times times, Writing out) {
        out.object("active", times.active(), TimesJson::writeActive)
                .object("develops", times.develops(), TimesJson::writeDevelops)
                .duration("longest_on", times.longestOn());
    }

    static Times read(Reading in) {
        return new Times(
                in.maybeObject("active", TimesJson::readActive).orElse(null),
                in.maybeObject("develops", TimesJson::readDevelops).orElse(null),
                in.maybeDuration("longest_on").orElse(null));
    }

    private static void writeActive(Active active, Writing out) {
        out.duration("usable_for", active.usableFor()).constant("at_end", active.atEnd());
    }

    private static Active readActive(Reading in) {
        return new Active(in.duration("usable_for"), in.constant("at_end", Active.AtEnd.class));
    }

    private static void writeDevelops(Develops develops, Writing out) {
        out.constant("counted", develops.counted())
                .object("plain", develops.plain(), TimesJson::writeSpan)
                .byConstant("heated", develops.heated(), TimesJson::writeSpan);
    }

    private static Develops readDevelops(Reading in) {
        return new Develops(
                in.constant("counted", Develops.Counted.class),
                in.object("plain", TimesJson::readSpan),
                in.byConstant("heated", Heat.class, TimesJson::readSpan));
    }

    private static void writeSpan(Span span, Writing out) {
        out.duration("from", span.from()).duration("to", span.to());
    }

    private static Span readSpan(Reading in) {
        return new Span(in.duration("from"), in.duration("to"));
    }
}
