package rinsebell.floor.testing;

import java.time.Duration;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/** One client of a {@link Story}; everything happens at the time the story has come to. */
public final class Head {
    private final Story story;
    private final VisitId id;

    Head(Story story, VisitId id) {
        this.story = story;
        this.id = id;
    }

    public VisitId id() {
        return id;
    }

    /** @return the number of the fact */
    public long tells(VisitEvent event) {
        return story.tells(Stream.visit(id), event);
    }

    public long answers(Gate gate) {
        return tells(new StayEvent.GateAnswered(gate));
    }

    public ApplicationId puts(BowlId bowl, Where where) {
        return new ApplicationId(
                tells(new WorkEvent.PutOn(bowl, where.area(), where.zone(), where.cover(), where.planned())));
    }

    public long lastOn(ApplicationId application) {
        return tells(new WorkEvent.LastOn(application));
    }

    public long covers(ApplicationId application, Cover cover) {
        return tells(new WorkEvent.CoverChanged(application, cover));
    }

    public long plans(ApplicationId application, @Nullable Duration time) {
        return tells(new WorkEvent.Planned(application, time));
    }

    public long heats(Heat heat) {
        return tells(new WorkEvent.HeatOn(heat));
    }

    public long heatOff() {
        return tells(new WorkEvent.HeatOff());
    }

    /** A look at a strand; it goes by the directions from there. */
    public long checks(ApplicationId application) {
        return checks(application, null);
    }

    public long checks(ApplicationId application, @Nullable CheckDecision decision) {
        return tells(new LookEvent.StrandChecked(application, StrandFinding.NOTHING_SAID, decision));
    }

    public long looksAgain(ApplicationId application, Duration after) {
        return checks(application, CheckDecision.lookAgain(after));
    }

    public long saysRinse(ApplicationId application) {
        return checks(application, CheckDecision.RINSE);
    }

    public long scalpIs(ScalpCheck.Finding finding) {
        return scalpIs(finding, null);
    }

    public long scalpIs(ScalpCheck.Finding finding, @Nullable CheckDecision decision) {
        return tells(new LookEvent.ScalpChecked(finding, decision));
    }

    public long complains(Complaint.Grade grade) {
        return tells(new LookEvent.Complained(grade));
    }

    public long rinses(ApplicationId... applications) {
        return tells(new WorkEvent.TakenOff(Set.of(applications), Ending.How.RINSED));
    }

    public long wipesOff(ApplicationId... applications) {
        return tells(new WorkEvent.TakenOff(Set.of(applications), Ending.How.WIPED_OFF));
    }

    public long leaves() {
        return tells(new StayEvent.Left());
    }

    public Visit visit() {
        return story.floor().visit(id).orElseThrow();
    }

    /** The instants of one application, as told so far. */
    public Timing timing(ApplicationId application) {
        var visit = visit();
        return Timing.of(story.floor(), visit, visit.application(application).orElseThrow());
    }

    public HeadTiming timing() {
        return HeadTiming.of(story.floor(), visit());
    }
}
