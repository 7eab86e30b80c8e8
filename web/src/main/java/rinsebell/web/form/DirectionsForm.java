package rinsebell.web.form;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Checks;
import rinsebell.floor.product.Contents;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Span;
import rinsebell.floor.product.Times;
import rinsebell.floor.product.Zone;
import rinsebell.floor.unit.Percent;
import rinsebell.web.Codes;

/** Reads the directions of a product, every field of them. */
final class DirectionsForm {
    static final int LONGEST_MINUTES = 720;
    static final Entries.Bounds PERCENT = new Entries.Bounds(BigDecimal.ZERO, BigDecimal.valueOf(100), 2);

    private DirectionsForm() {}

    static Directions directions(Entries entries) {
        return new Directions(
                entries.neededText("name", Entries.LONGEST_LABEL),
                entries.neededChoice("kind", Kind.class),
                new Times(active(entries), develops(entries), minutes(entries, "longestOn")),
                limits(entries),
                MixingForm.mixing(entries),
                checks(entries),
                contents(entries));
    }

    private static @Nullable Duration minutes(Entries entries, String field) {
        return entries.minutesOrNull(field, 1, LONGEST_MINUTES);
    }

    private static @Nullable Active active(Entries entries) {
        var usableFor = entries.minutes("usableFor", 1, LONGEST_MINUTES);
        var atEnd = entries.choice("atEnd", Active.AtEnd.class);
        if (usableFor.isEmpty()) {
            return null;
        }
        return new Active(usableFor.get(), entries.needed("atEnd", atEnd, Active.AtEnd.RINSE));
    }

    private static @Nullable Develops develops(Entries entries) {
        var plain = span(entries, "develops");
        var counted = entries.choice("develops.counted", Develops.Counted.class);
        var heated = heated(entries);
        if (plain.isEmpty()) {
            return null;
        }
        return new Develops(
                entries.needed("develops.counted", counted, Develops.Counted.FROM_MIXING), plain.get(), heated);
    }

    private static Map<Heat, Span> heated(Entries entries) {
        var heated = new EnumMap<Heat, Span>(Heat.class);
        for (var heat : Heat.values()) {
            span(entries, "heats." + Codes.of(heat)).ifPresent(span -> heated.put(heat, span));
        }
        return heated;
    }

    /** From and to; both or neither, and in that order. */
    private static Optional<Span> span(Entries entries, String field) {
        var from = entries.minutes(field + ".from", 0, LONGEST_MINUTES);
        var to = entries.minutes(field + ".to", 1, LONGEST_MINUTES);
        if (from.isEmpty() && to.isEmpty()) {
            return Optional.empty();
        }
        var begin = entries.needed(field + ".from", from, Duration.ZERO);
        var end = entries.needed(field + ".to", to, begin);
        if (end.compareTo(begin) < 0) {
            entries.fault(field + ".to", Fault.ENDS_BEFORE);
            return Optional.empty();
        }
        return Optional.of(new Span(begin, end));
    }

    private static Limits limits(Entries entries) {
        var covers = new EnumMap<Cover, Allowance>(Cover.class);
        for (var cover : Cover.values()) {
            covers.put(cover, allowance(entries, "covers." + Codes.of(cover), cover == Cover.OPEN));
        }
        var heats = new EnumMap<Heat, Allowance>(Heat.class);
        for (var heat : Heat.values()) {
            heats.put(heat, allowance(entries, "heats." + Codes.of(heat), false));
        }
        return new Limits(entries.neededChoice("zone", Zone.class), covers, heats);
    }

    /** A longest time of something that is not allowed means nothing. */
    private static Allowance allowance(Entries entries, String field, boolean unlessSaid) {
        var upTo = minutes(entries, field + ".upTo");
        var allowed = entries.yesNo(field + ".allowed").orElse(unlessSaid);
        return allowed ? new Allowance(true, upTo) : Allowance.NO;
    }

    private static Checks checks(Entries entries) {
        return new Checks(
                minutes(entries, "checks.strandEvery"),
                minutes(entries, "checks.strandEveryHeated"),
                minutes(entries, "checks.scalpEvery"),
                minutes(entries, "checks.scalpEveryHeated"));
    }

    private static Contents contents(Entries entries) {
        var dye = entries.needed("dye", entries.yesNo("dye"), false);
        return new Contents(dye, percent(entries, "peroxide"), percent(entries, "ammonia"));
    }

    private static @Nullable Percent percent(Entries entries, String field) {
        return entries.decimal(field, PERCENT).map(Percent::new).orElse(null);
    }
}
