package rinsebell.demo;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.ThrowAway;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/** One client of a {@link Script}: says what happens to them, and how long ago. */
final class Guest {
    private final Script script;
    private final String initials;
    private final StaffId stylist;
    private final List<ApplicationId> on = new ArrayList<>();
    private @Nullable ClientId client;
    private @Nullable VisitId visit;
    private @Nullable BowlId bowl;

    Guest(Script script, String initials, StaffId stylist) {
        this.script = script;
        this.initials = initials;
        this.stylist = stylist;
    }

    /** Somebody who has a record. */
    Guest known(ClientId record) {
        client = record;
        return this;
    }

    Guest arrives(Duration ago, Place place, Gate answers) {
        var arrival = new StayEvent.Arrived(place, stylist, null, client);
        script.at(ago, () -> visit = new VisitId(script.press(new Welcome(arrival, initials, answers), ago, stylist)));
        // Whoever comes for colour goes home with dry hair.
        return tells(ago, new StayEvent.ServicesListed(List.of(Service.BOWL, Service.BLOW_DRY)));
    }

    Guest moves(Duration ago, Place place) {
        return tells(ago, new StayEvent.Moved(place));
    }

    Guest leaves(Duration ago) {
        return tells(ago, new StayEvent.Left());
    }

    Guest mixes(Duration ago, BowlReason reason, Weighed... weighed) {
        script.at(ago, () -> bowl = new BowlId(script.press(new Mix(List.of(weighed), reason, visit()), ago, stylist)));
        return this;
    }

    /** The bowl mixed last goes on. */
    Guest putsOn(Duration ago, Area area, Zone zone, Cover cover) {
        script.at(ago, () -> {
            var putOn = new WorkEvent.PutOn(known(bowl), area, zone, cover, null);
            on.add(new ApplicationId(press(ago, putOn)));
        });
        return this;
    }

    /** The last of what was put on last is on. */
    Guest lastOn(Duration ago) {
        script.at(ago, () -> press(ago, new WorkEvent.LastOn(newest())));
        return this;
    }

    /** The bowl mixed last is thrown away; null when nobody said what was left. */
    Guest throwsAway(Duration ago, @Nullable Left left) {
        script.at(ago, () -> script.press(new ThrowAway(known(bowl), left), ago, stylist));
        return this;
    }

    Guest steams(Duration ago) {
        return tells(ago, new WorkEvent.HeatOn(Heat.GENTLE_STEAM));
    }

    /** A look at a strand of each bowl that is on, and when to look again. */
    Guest looks(Duration ago, int level, StrandFinding.Tone tone, Duration again) {
        var finding = new StrandFinding(level, tone, StrandFinding.Stretch.STRETCHES_WELL, StrandFinding.Dryness.MOIST);
        script.at(
                ago,
                () -> live().forEach(one ->
                        press(ago, new LookEvent.StrandChecked(one.id(), finding, CheckDecision.lookAgain(again)))));
        return this;
    }

    Guest scalpIs(Duration ago, ScalpCheck.Finding finding) {
        return tells(ago, new LookEvent.ScalpChecked(finding, null));
    }

    /** Water is on, over everything on this head. */
    Guest rinses(Duration ago) {
        script.at(ago, () -> press(ago, new WorkEvent.TakenOff(onHair(), Ending.How.RINSED)));
        return this;
    }

    Guest tells(Duration ago, VisitEvent event) {
        script.at(ago, () -> press(ago, event));
        return this;
    }

    private long press(Duration ago, VisitEvent event) {
        return script.press(Report.of(visit(), event), ago, stylist);
    }

    private VisitId visit() {
        return known(visit);
    }

    private ApplicationId newest() {
        return on.get(on.size() - 1);
    }

    private List<Application> live() {
        return script.floor().visit(visit()).orElseThrow().live();
    }

    private Set<ApplicationId> onHair() {
        return script.floor().visit(visit()).orElseThrow().onHair().stream()
                .map(Application::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    private <T> T known(@Nullable T what) {
        if (what == null) {
            throw new IllegalStateException(initials + " is spoken of before it is told where that came from");
        }
        return what;
    }
}
