package rinsebell.floor.bell;

import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.visit.Complaint;

/** Discomfort that a client spoke of. */
final class DiscomfortBells {
    private DiscomfortBells() {}

    static void addTo(List<Bell> found, Head head) {
        standing(head).map(complaint -> bell(head, complaint)).forEach(found::add);
    }

    /** Those that ask for what is on to come off at once. */
    static Stream<Bell> atOnce(Head head) {
        return standing(head)
                .filter(complaint -> complaint.grade().isOffAtOnce())
                .map(complaint -> bell(head, complaint));
    }

    private static Stream<Complaint> standing(Head head) {
        return head.visit().complaints().stream().filter(complaint -> !isOver(head, complaint));
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
