package rinsebell.floor.bell;

import java.util.List;
import rinsebell.floor.visit.Complaint;

/** Discomfort that a client spoke of. */
final class DiscomfortBells {
    private DiscomfortBells() {}

    static void addTo(List<Bell> found, Head head) {
        head.visit().complaints().stream()
                .filter(complaint -> !isOver(head, complaint))
                .map(complaint -> bell(head, complaint))
                .forEach(found::add);
    }

    /** Tingling: the scalp was looked at. Anything worse: the product is off and the scalp was looked at. */
    private static boolean isOver(Head head, Complaint complaint) {
        var looked = head.visit().scalpChecks().stream()
                .anyMatch(check -> !check.at().isBefore(complaint.at()) && check.seq() != complaint.seq());
        var off = head.visit().onHair().stream()
                .allMatch(application -> application.firstOn().isAfter(complaint.at()));
        return looked && (off || !complaint.grade().isOffAtOnce());
    }

    private static Bell bell(Head head, Complaint complaint) {
        var atOnce = complaint.grade().isOffAtOnce();
        var stage = new Stage(
                complaint.at(),
                Stage.Step.DUE,
                atOnce ? Priority.HIGH : Priority.MEDIUM,
                atOnce ? Audience.EVERYONE : Audience.STYLIST);
        return head.bell(kind(complaint.grade()), head.subject(), complaint.seq(), List.of(stage));
    }

    private static BellKind kind(Complaint.Grade grade) {
        return switch (grade) {
            case TINGLING -> BellKind.TINGLING;
            case BURNING -> BellKind.BURNING;
            case HOT_FOIL -> BellKind.HOT_FOIL;
        };
    }
}
