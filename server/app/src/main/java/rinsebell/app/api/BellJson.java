package rinsebell.app.api;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Ring;
import rinsebell.floor.bell.Stage;
import rinsebell.web.Codes;
import rinsebell.web.board.EarCode;
import rinsebell.web.board.Moment;
import rinsebell.web.board.ReasonTelling;

/**
 * A bell.
 *
 * @param kind what it rings for
 * @param subject with {@code kind} and {@code anchor}, what acknowledges it
 * @param visit whose head; absent when it is about none
 * @param state of ISA-18.2: normal, unacknowledged, acknowledged or shelved
 * @param round what it is one round with; its own kind, subject and anchor where it stands alone
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
        String state,
        RoundJson round,
        boolean seen,
        boolean saved,
        @Nullable StageJson stage,
        List<StageJson> stages,
        List<TurnJson> turns,
        List<ReasonJson> reasons) {

    record RoundJson(String kind, long subject, long anchor) {
        static RoundJson of(BellKey key) {
            return new RoundJson(Codes.of(key.kind()), key.subject(), key.anchor());
        }
    }

    /**
     * What it does from an instant on, if nobody does anything.
     *
     * @param ears who hears it: {@code all}, or codes such as {@code staff-4}, {@code chair-3}, {@code assistants}
     */
    record TurnJson(String from, String state, String priority, List<String> ears) {
        static TurnJson of(Ring ring) {
            return new TurnJson(
                    Json.instant(ring.from()),
                    Codes.of(ring.state()),
                    Codes.of(ring.stage().priority()),
                    EarCode.all(ring.reach()));
        }
    }

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
                Codes.of(bell.state(moment.now())),
                RoundJson.of(bell.round()),
                bell.isSeen(moment.now()),
                bell.key().isSaved(),
                bell.at(moment.now()).map(StageJson::of).orElse(null),
                bell.stages().stream().map(StageJson::of).toList(),
                bell.rings().stream().map(TurnJson::of).toList(),
                reasons);
    }

    static List<BellJson> all(Moment moment) {
        return moment.bells().stream().map(bell -> of(bell, moment)).toList();
    }
}
