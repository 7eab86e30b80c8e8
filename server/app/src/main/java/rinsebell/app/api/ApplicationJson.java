package rinsebell.app.api;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.floor.visit.Visit;
import rinsebell.web.Codes;
import rinsebell.web.board.Moment;

/**
 * A bowl on a section of one head.
 *
 * @param plannedMinutes the stylist's own time; absent for none
 * @param readyFrom the earliest sensible end; absent while not known, or when nothing is on the hair
 * @param rinseBy the latest allowed end; absent where none is known
 * @param usableUntil until when more of the bowl may be put on
 * @param ended how and when; absent while it is on
 */
record ApplicationJson(
        long id,
        long bowl,
        String area,
        String zone,
        String cover,
        String firstOn,
        @Nullable String lastOn,
        @Nullable Long plannedMinutes,
        @Nullable String readyFrom,
        @Nullable LimitJson rinseBy,
        List<LimitJson> limits,
        @Nullable String usableUntil,
        List<CheckJson> checks,
        List<String> foilsOut,
        @Nullable EndJson ended) {

    /** @param decision "rinse", or minutes after which to look again; absent for "by the directions" */
    record CheckJson(
            String at,
            @Nullable Integer level,
            @Nullable String tone,
            @Nullable String stretch,
            @Nullable String dryness,
            @Nullable String decision) {
        static CheckJson of(StrandCheck check) {
            var finding = check.finding();
            return new CheckJson(
                    Json.instant(check.at()),
                    finding.level(),
                    Json.code(finding.tone()),
                    Json.code(finding.stretch()),
                    Json.code(finding.dryness()),
                    DecisionJson.of(check.decision()));
        }
    }

    record EndJson(String at, String how) {
        static EndJson of(Ending ending) {
            return new EndJson(Json.instant(ending.at()), Codes.of(ending.how()));
        }
    }

    static ApplicationJson of(Application application, Visit visit, Moment moment) {
        var timing =
                Optional.of(application).filter(Application::isOnHair).map(on -> Timing.of(moment.floor(), visit, on));
        return new ApplicationJson(
                application.id().value(),
                application.bowl().value(),
                Codes.of(application.area()),
                Codes.of(application.zone()),
                Codes.of(application.cover().cover()),
                Json.instant(application.firstOn()),
                Json.instantOrNull(application.lastOn()),
                Json.minutes(application.planned()),
                timing.flatMap(Timing::ready).map(Json::instant).orElse(null),
                timing.flatMap(Timing::rinseBy).map(LimitJson::of).orElse(null),
                timing.map(Timing::limits).orElse(List.of()).stream()
                        .map(LimitJson::of)
                        .toList(),
                timing.flatMap(Timing::usableUntil).map(Json::instant).orElse(null),
                application.checks().stream().map(CheckJson::of).toList(),
                application.foilsOut().stream().map(Json::instant).toList(),
                Optional.ofNullable(application.ending()).map(EndJson::of).orElse(null));
    }
}
