package rinsebell.app.api;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Looks;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.HeatSpan;
import rinsebell.floor.visit.Lift;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.Visit;
import rinsebell.web.Codes;
import rinsebell.web.board.Moment;

/**
 * One client from arrival to leaving.
 *
 * @param label how the floor calls them; empty when it was erased
 * @param client whose record; absent when nobody known
 * @param leftAt absent while they are here
 * @param services what they came for, in this order
 * @param toldEnd by when they were told to be done; absent where nobody told them
 * @param readyFrom when all that is on has reached its earliest sensible end
 * @param rinseBy when the head must be rinsed at the latest
 * @param noCommonRinse whether no instant suits all that is on
 * @param whileOn what the head may have while this is on it; absent with nothing on
 */
record VisitJson(
        long id,
        String label,
        String place,
        String placeSince,
        @Nullable Long stylist,
        @Nullable Long helper,
        @Nullable Long client,
        String arrivedAt,
        @Nullable String leftAt,
        List<String> services,
        @Nullable String toldEnd,
        GateJson gate,
        List<ApplicationJson> applications,
        List<HeatJson> heats,
        List<ScalpJson> scalpChecks,
        List<ComplaintJson> complaints,
        @Nullable String readyFrom,
        @Nullable LimitJson rinseBy,
        boolean noCommonRinse,
        @Nullable WhileOnJson whileOn,
        @Nullable String nextStrandCheck,
        @Nullable String nextScalpCheck,
        RoundJson round) {

    record HeatJson(String heat, String from, @Nullable String until) {
        static HeatJson of(HeatSpan span) {
            return new HeatJson(Codes.of(span.heat()), Json.instant(span.from()), Json.instantOrNull(span.until()));
        }
    }

    record ScalpJson(String at, String finding, @Nullable String decision) {
        static ScalpJson of(ScalpCheck check) {
            return new ScalpJson(
                    Json.instant(check.at()), Codes.of(check.finding()), DecisionJson.of(check.decision()));
        }
    }

    record ComplaintJson(String at, String grade) {
        static ComplaintJson of(Complaint complaint) {
            return new ComplaintJson(Json.instant(complaint.at()), Codes.of(complaint.grade()));
        }
    }

    /** What was said after rinsing. */
    record RoundJson(
            @Nullable String towelDriedAt,
            @Nullable Boolean liftReached,
            @Nullable String stoppedAt) {
        static RoundJson of(Visit.Round round) {
            return new RoundJson(
                    Json.instantOrNull(round.towelDriedAt()),
                    Optional.ofNullable(round.lift()).map(Lift::reached).orElse(null),
                    Json.instantOrNull(round.stoppedAt()));
        }
    }

    static VisitJson of(Visit visit, Moment moment) {
        var timing = HeadTiming.of(moment.floor(), visit);
        var stay = visit.stay();
        return new VisitJson(
                visit.id().value(),
                moment.texts().apply(visit.label()),
                Codes.of(visit.place()),
                Json.instant(stay.placeSince()),
                number(stay.stylist()),
                number(stay.helper()),
                Optional.ofNullable(stay.client()).map(client -> client.value()).orElse(null),
                Json.instant(stay.arrivedAt()),
                Json.instantOrNull(stay.leftAt()),
                visit.services().listed().stream().map(Codes::of).toList(),
                Json.instantOrNull(visit.services().told().orElse(null)),
                GateJson.of(visit.gate()),
                visit.applications().stream()
                        .map(application -> ApplicationJson.of(application, visit, moment))
                        .toList(),
                visit.heats().stream().map(HeatJson::of).toList(),
                visit.scalpChecks().stream().map(ScalpJson::of).toList(),
                visit.complaints().stream().map(ComplaintJson::of).toList(),
                timing.readyFrom().map(Json::instant).orElse(null),
                timing.rinseBy().map(LimitJson::of).orElse(null),
                timing.hasNoCommonRinse(),
                new Restrictions(moment.floor(), visit)
                        .whileOn()
                        .map(WhileOnJson::of)
                        .orElse(null),
                timing.nextStrand().map(Looks.Due::at).map(Json::instant).orElse(null),
                timing.nextScalp().map(Looks.Due::at).map(Json::instant).orElse(null),
                RoundJson.of(visit.round()));
    }

    private static @Nullable Long number(@Nullable StaffId staff) {
        return staff == null ? null : staff.value();
    }
}
