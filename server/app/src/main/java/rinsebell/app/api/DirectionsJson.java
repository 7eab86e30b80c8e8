package rinsebell.app.api;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Contents;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Mixing;
import rinsebell.floor.product.Span;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;
import rinsebell.web.Codes;

/**
 * Directions in the shape in which they are also typed in: what was read can be sent back. Times are in minutes, weights
 * in grams for 60 g of the product, strengths in percent by weight; what is absent is not known or not limited.
 */
final class DirectionsJson {
    private DirectionsJson() {}

    static Map<String, Object> of(Directions directions) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", directions.name());
        json.put("kind", Codes.of(directions.kind()));
        putTimes(json, directions);
        json.put("zone", Codes.of(directions.limits().zone()));
        json.put("covers", AllowanceJson.covers(directions.limits()));
        json.put("heats", heats(directions));
        putMixing(json, directions.mixing());
        json.put("checks", checks(directions));
        putContents(json, directions.contents());
        return json;
    }

    private static void putTimes(Map<String, Object> json, Directions directions) {
        var times = directions.times();
        if (times.active() != null) {
            json.put("usableFor", times.active().usableFor().toMinutes());
            json.put("atEnd", Codes.of(times.active().atEnd()));
        }
        if (times.develops() != null) {
            var develops = span(times.develops().plain());
            develops.put("counted", Codes.of(times.develops().counted()));
            json.put("develops", develops);
        }
        put(json, "longestOn", times.longestOn());
    }

    private static Map<String, Object> span(Span span) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", span.from().toMinutes());
        json.put("to", span.to().toMinutes());
        return json;
    }

    /** With the shorter development under each heat. */
    private static Map<String, Map<String, Object>> heats(Directions directions) {
        var json = AllowanceJson.heats(directions.limits());
        for (var heat : Heat.values()) {
            heated(directions, heat)
                    .ifPresent(span ->
                            Objects.requireNonNull(json.get(Codes.of(heat))).putAll(span(span)));
        }
        return json;
    }

    private static Optional<Span> heated(Directions directions, Heat heat) {
        return Optional.ofNullable(directions.times().develops())
                .map(Develops::heated)
                .flatMap(heated -> Optional.ofNullable(heated.get(heat)));
    }

    private static void putMixing(Map<String, Object> json, Mixing mixing) {
        List<MixtureJson> mixtures = new ArrayList<>();
        mixing.mixtures()
                .forEach(mixture -> mixtures.add(new MixtureJson(
                        mixture.name(),
                        mixture.developerPer60().amount(),
                        mixture.extraPer60().amount())));
        json.put("mixtures", mixtures);
        json.put("strengths", percents(mixing.strengths()));
        json.put("strengthsOnScalp", percents(mixing.strengthsOnScalp()));
        Map<String, PairingJson> pairings = new LinkedHashMap<>();
        mixing.pairings()
                .forEach(pairing -> pairings.put(
                        Codes.of(pairing.with()),
                        new PairingJson(
                                Codes.of(pairing.rule()),
                                pairing.limit().map(Grams::amount).orElse(null))));
        json.put("pairings", pairings);
    }

    record MixtureJson(String name, BigDecimal developerPer60, BigDecimal extraPer60) {}

    record PairingJson(String rule, @Nullable BigDecimal atMostPer60) {}

    private static List<BigDecimal> percents(java.util.Set<Percent> strengths) {
        return strengths.stream().sorted().map(Percent::value).toList();
    }

    private static Map<String, Object> checks(Directions directions) {
        Map<String, Object> json = new LinkedHashMap<>();
        var checks = directions.checks();
        put(json, "strandEvery", checks.strandEvery());
        put(json, "strandEveryHeated", checks.strandEveryHeated());
        put(json, "scalpEvery", checks.scalpEvery());
        put(json, "scalpEveryHeated", checks.scalpEveryHeated());
        return json;
    }

    private static void putContents(Map<String, Object> json, Contents contents) {
        json.put("dye", contents.dye());
        if (contents.peroxide() != null) {
            json.put("peroxide", contents.peroxide().value());
        }
        if (contents.ammonia() != null) {
            json.put("ammonia", contents.ammonia().value());
        }
    }

    private static void put(Map<String, Object> json, String name, @Nullable Duration duration) {
        if (duration != null) {
            json.put(name, duration.toMinutes());
        }
    }
}
