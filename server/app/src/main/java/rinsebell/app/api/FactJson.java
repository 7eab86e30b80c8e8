package rinsebell.app.api;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Correction;
import rinsebell.floor.Fact;
import rinsebell.floor.Stream;
import rinsebell.floor.TextId;
import rinsebell.web.board.Moment;

/**
 * One line of the log.
 *
 * @param stream "salon", "day-" and a date, or "visit-" and a number
 * @param happened when it happened, as it was said first
 * @param standsAt when it happened, as it stands now; absent when it was withdrawn, and for corrections
 * @param by which member of staff; absent when nobody was named
 * @param kind what sort of fact
 * @param corrects the number of the fact that this one corrects; absent for all others
 * @param hangsOn the numbers of the facts that this one hangs on
 * @param unsure whether its instant is not sure, as it stands now
 * @param text its erasable text; absent for none
 */
record FactJson(
        long seq,
        String stream,
        String happened,
        @Nullable String standsAt,
        String recorded,
        @Nullable Long by,
        String kind,
        @Nullable Long corrects,
        List<Long> hangsOn,
        boolean unsure,
        @Nullable String text) {

    static FactJson of(Fact fact, Moment moment) {
        return new FactJson(
                fact.seq(),
                stream(fact.stream()),
                Json.instant(fact.happened()),
                moment.floor()
                        .standing(fact.seq())
                        .map(Fact::happened)
                        .map(Json::instant)
                        .orElse(null),
                Json.instant(fact.recorded()),
                Optional.ofNullable(fact.by()).map(staff -> staff.value()).orElse(null),
                kind(fact),
                fact.event() instanceof Correction correction ? correction.of() : null,
                fact.event().hangsOn().stream().sorted().toList(),
                moment.floor().standing(fact.seq()).orElse(fact).unsure(),
                Optional.of(moment.texts().apply(new TextId(fact.seq())))
                        .filter(text -> !text.isEmpty())
                        .orElse(null));
    }

    static String stream(Stream stream) {
        if (stream instanceof Stream.OfVisit of) {
            return "visit-" + of.visit().value();
        }
        return stream instanceof Stream.OfDay of ? "day-" + of.date() : "salon";
    }

    /** Such as {@code strand-checked}. */
    private static String kind(Fact fact) {
        return fact.event()
                .getClass()
                .getSimpleName()
                .replaceAll("(?<!^)([A-Z])", "-$1")
                .toLowerCase(Locale.ROOT);
    }
}
