package rinsebell.web.form;

import java.util.Optional;
import rinsebell.floor.Command;
import rinsebell.floor.command.PutAlready;
import rinsebell.floor.command.Rinse;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.WorkEvent;

/** Presses about what is done to a head, and what is seen and felt there. */
final class HeadForms {
    static final int LONGEST_PLANNED_MINUTES = 240;

    /** Something that is put on. */
    static final PressForm PUT_ON = VisitForms.reporting(HeadForms::putOn);

    private HeadForms() {}

    static void enter(Presses presses) {
        enterWork(presses);
        enterLooks(presses);
    }

    private static void enterWork(Presses presses) {
        presses.enter(VisitForms.VISITS, "put-on", PUT_ON);
        presses.enter(VisitForms.VISITS, "already-on", PressForm.asking(HeadForms::alreadyOn));
        presses.enter(VisitForms.VISITS, "last-on", onApplication(WorkEvent.LastOn::new));
        presses.enter(VisitForms.VISITS, "cover", VisitForms.reporting(HeadForms::cover));
        presses.enter(VisitForms.VISITS, "plan", VisitForms.reporting(HeadForms::plan));
        presses.enter(VisitForms.VISITS, "heat-on", VisitForms.reporting(HeadForms::heatOn));
        presses.enter(VisitForms.VISITS, "heat-off", VisitForms.reporting(entries -> new WorkEvent.HeatOff()));
        presses.enter(VisitForms.VISITS, "foils-out", onApplication(WorkEvent.FoilsOut::new));
        presses.enter(VisitForms.VISITS, "emulsified", onApplication(WorkEvent.Emulsified::new));
        presses.enter(VisitForms.VISITS, "rinse", PressForm.asking(HeadForms::rinse));
        presses.enter(
                VisitForms.VISITS, "wipe-off", VisitForms.reporting(entries -> off(entries, Ending.How.WIPED_OFF)));
        presses.enter(VisitForms.VISITS, "towel-dried", VisitForms.reporting(entries -> new WorkEvent.TowelDried()));
    }

    private static void enterLooks(Presses presses) {
        presses.enter(VisitForms.VISITS, "strand", VisitForms.reporting(HeadForms::strand));
        presses.enter(VisitForms.VISITS, "scalp", VisitForms.reporting(HeadForms::scalp));
        presses.enter(VisitForms.VISITS, "lift", VisitForms.reporting(HeadForms::lift));
        presses.enter(VisitForms.VISITS, "stop", VisitForms.reporting(entries -> new LookEvent.RoundsStopped()));
        presses.enter(VisitForms.VISITS, "discomfort", VisitForms.reporting(HeadForms::discomfort));
    }

    private interface OnOne {
        VisitEvent of(rinsebell.floor.visit.ApplicationId application);
    }

    private static PressForm onApplication(OnOne event) {
        return VisitForms.reporting(entries -> event.of(EntryHeads.application(entries)));
    }

    private static VisitEvent putOn(Entries entries) {
        return new WorkEvent.PutOn(
                EntryHeads.neededBowl(entries, "bowl"),
                entries.neededChoice("area", Area.class),
                entries.neededChoice("zone", Zone.class),
                entries.choice("cover", Cover.class, Cover.OPEN),
                entries.minutesOrNull("planned", 1, LONGEST_PLANNED_MINUTES));
    }

    /** One press is enough; whoever does not say where, gets what is watched most closely. */
    private static Command alreadyOn(Entries entries) {
        return new PutAlready(
                EntryHeads.visit(entries),
                entries.choice("area", Area.class, Area.WHOLE_HEAD),
                entries.choice("zone", Zone.class, Zone.ON_SCALP),
                entries.choice("cover", Cover.class, Cover.OPEN));
    }

    private static VisitEvent cover(Entries entries) {
        return new WorkEvent.CoverChanged(EntryHeads.application(entries), entries.neededChoice("cover", Cover.class));
    }

    private static VisitEvent plan(Entries entries) {
        return new WorkEvent.Planned(
                EntryHeads.application(entries), entries.minutesOrNull("planned", 1, LONGEST_PLANNED_MINUTES));
    }

    private static VisitEvent heatOn(Entries entries) {
        return new WorkEvent.HeatOn(entries.neededChoice("heat", Heat.class));
    }

    /** Water is on: at a basin, where one is named, and then the client is there. */
    private static Command rinse(Entries entries) {
        return new Rinse(
                EntryHeads.visit(entries),
                EntryHeads.applications(entries),
                EntryPlaces.basin(entries, "basin").orElse(null),
                entries.note());
    }

    private static VisitEvent off(Entries entries, Ending.How how) {
        return new WorkEvent.TakenOff(EntryHeads.applications(entries), how);
    }

    private static VisitEvent strand(Entries entries) {
        return new LookEvent.StrandChecked(
                EntryHeads.application(entries), finding(entries), EntryHeads.decision(entries));
    }

    private static StrandFinding finding(Entries entries) {
        return new StrandFinding(
                entries.whole("level", StrandFinding.LOWEST_LEVEL, StrandFinding.HIGHEST_LEVEL)
                        .orElse(null),
                entries.choice("tone", StrandFinding.Tone.class).orElse(null),
                entries.choice("stretch", StrandFinding.Stretch.class).orElse(null),
                entries.choice("dryness", StrandFinding.Dryness.class).orElse(null));
    }

    private static VisitEvent scalp(Entries entries) {
        return new LookEvent.ScalpChecked(
                entries.neededChoice("finding", ScalpCheck.Finding.class), EntryHeads.decision(entries));
    }

    private static VisitEvent lift(Entries entries) {
        Optional<Boolean> reached = entries.yesNo("reached");
        return new LookEvent.LiftJudged(entries.needed("reached", reached, false));
    }

    private static VisitEvent discomfort(Entries entries) {
        return new LookEvent.Complained(entries.neededChoice("grade", Complaint.Grade.class));
    }
}
