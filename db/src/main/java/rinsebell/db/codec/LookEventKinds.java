package rinsebell.db.codec;

import java.util.List;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.LookEvent.Complained;
import rinsebell.floor.visit.LookEvent.LiftJudged;
import rinsebell.floor.visit.LookEvent.RoundsStopped;
import rinsebell.floor.visit.LookEvent.ScalpChecked;
import rinsebell.floor.visit.LookEvent.StrandChecked;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.StrandFinding.Dryness;
import rinsebell.floor.visit.StrandFinding.Stretch;
import rinsebell.floor.visit.StrandFinding.Tone;

/** What was seen, felt or judged. */
final class LookEventKinds {

    static final List<EventKind<?>> ALL = List.of(
            EventKind.first(
                    "strand-checked",
                    StrandChecked.class,
                    (event, out) -> WorkEventKinds.write(event.application(), out)
                            .object("finding", event.finding(), LookEventKinds::writeFinding)
                            .object("decision", event.decision(), LookEventKinds::writeDecision),
                    in -> new StrandChecked(
                            WorkEventKinds.application(in),
                            in.object("finding", LookEventKinds::readFinding),
                            in.maybeObject("decision", LookEventKinds::readDecision)
                                    .orElse(null))),
            EventKind.first(
                    "scalp-checked",
                    ScalpChecked.class,
                    (event, out) -> out.constant("finding", event.finding())
                            .object("decision", event.decision(), LookEventKinds::writeDecision),
                    in -> new ScalpChecked(
                            in.constant("finding", ScalpCheck.Finding.class),
                            in.maybeObject("decision", LookEventKinds::readDecision)
                                    .orElse(null))),
            EventKind.first(
                    "complained",
                    Complained.class,
                    (event, out) -> out.constant("grade", event.grade()),
                    in -> new Complained(in.constant("grade", Complaint.Grade.class))),
            EventKind.first(
                    "lift-judged",
                    LiftJudged.class,
                    (event, out) -> out.flag("reached", event.reached()),
                    in -> new LiftJudged(in.flag("reached"))),
            EventKind.bare("rounds-stopped", RoundsStopped.class, RoundsStopped::new));

    private LookEventKinds() {}

    private static void writeFinding(StrandFinding finding, Writing out) {
        out.whole("level", finding.level())
                .constant("tone", finding.tone())
                .constant("stretch", finding.stretch())
                .constant("dryness", finding.dryness());
    }

    private static StrandFinding readFinding(Reading in) {
        return new StrandFinding(
                in.maybeWhole("level").orElse(null),
                in.maybeConstant("tone", Tone.class).orElse(null),
                in.maybeConstant("stretch", Stretch.class).orElse(null),
                in.maybeConstant("dryness", Dryness.class).orElse(null));
    }

    private static void writeDecision(CheckDecision decision, Writing out) {
        if (decision instanceof CheckDecision.LookAgain again) {
            out.duration("look_again", again.after());
        } else {
            out.flag("rinse", true);
        }
    }

    private static CheckDecision readDecision(Reading in) {
        return in.maybeDuration("look_again").map(CheckDecision::lookAgain).orElseGet(() -> rinse(in));
    }

    private static CheckDecision rinse(Reading in) {
        in.flag("rinse");
        return CheckDecision.RINSE;
    }
}
