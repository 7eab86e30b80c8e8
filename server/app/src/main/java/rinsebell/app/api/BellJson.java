package rinsebell.app.api;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Stage;
import rinsebell.web.board.Moment;
import rinsebell.web.board.ReasonTelling;
import rinsebell.web.form.Codes;

/**
 * A bell.
 *
 * @param kind what it rings for
 * @param subject with {@code kind} and {@code anchor}, what acknowledges it
 * @param visit whose head; absent when it is about none
 * @param seen whether somebody acknowledged it
 * @param saved false for burning that could not be saved and rings all the same
 * @param stage the stage it is in; absent before its first
 * @param stages all of them, in time
 */
record BellJson(
        String kind,
        long subject,
        long anchor,
        @Nullable Long visit,
        boolean seen,
        boolean saved,
        @Nullable StageJson stage,
        List<StageJson> stages,
        List<ReasonJson> reasons) {

    record StageJson(String from, String step, String priority, String audience) {
        static StageJson of(Stage stage) {
            return new StageJson(
                    Json.instant(stage.from()),
                    Codes.of(stage.step()),
                    Codes.of(stage.priority()),
                    Codes.of(stage.audience()));
        }
    }

    record ReasonJson(String code, String basis, String text) {}

    static BellJson of(Bell bell, Moment moment) {
        var reasons = bell.reasons().stream()
                .map(reason -> new ReasonJson(
                        reason.code().name(), reason.code().basis().name(), ReasonTelling.say(reason, moment)))
                .toList();
        return new BellJson(
                Codes.of(bell.kind()),
                bell.key().subject(),
                bell.key().anchor(),
                Optional.ofNullable(bell.visit()).map(visit -> visit.value()).orElse(null),
                bell.isSeen(moment.now()),
                bell.key().isSaved(),
                bell.at(moment.now()).map(StageJson::of).orElse(null),
                bell.stages().stream().map(StageJson::of).toList(),
                reasons);
    }

    static List<BellJson> all(Moment moment) {
        return moment.bells().stream().map(bell -> of(bell, moment)).toList();
    }
}
