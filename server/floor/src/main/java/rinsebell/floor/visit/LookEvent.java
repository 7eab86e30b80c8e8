package rinsebell.floor.visit;

import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;

/** What was seen, felt or judged. A fact's text may be a note. */
public sealed interface LookEvent extends VisitEvent {
    record StrandChecked(
            ApplicationId application,
            StrandFinding finding,
            @Nullable CheckDecision decision) implements LookEvent, OnApplication {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.change(
                    application, one -> one.checked(new StrandCheck(fact.seq(), fact.happened(), finding, decision)));
        }

        @Override
        public ApplicationId subject() {
            return application;
        }
    }

    record ScalpChecked(
            ScalpCheck.Finding finding, @Nullable CheckDecision decision) implements LookEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.look(new ScalpCheck(fact.seq(), fact.happened(), finding, decision));
        }
    }

    /** The client spoke of discomfort. */
    record Complained(Complaint.Grade grade) implements LookEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.complain(new Complaint(fact.seq(), grade, fact.happened()));
        }
    }

    /** Whether the hair is light enough. */
    record LiftJudged(boolean reached) implements LookEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.judge(new Lift(fact.seq(), reached, fact.happened()));
        }
    }

    /** No further round today. */
    record RoundsStopped() implements LookEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.stop(fact.happened());
        }
    }
}
