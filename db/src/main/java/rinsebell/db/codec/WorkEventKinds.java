package rinsebell.db.codec;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.WorkEvent.CoverChanged;
import rinsebell.floor.visit.WorkEvent.Emulsified;
import rinsebell.floor.visit.WorkEvent.FoilsOut;
import rinsebell.floor.visit.WorkEvent.HeatOff;
import rinsebell.floor.visit.WorkEvent.HeatOn;
import rinsebell.floor.visit.WorkEvent.LastOn;
import rinsebell.floor.visit.WorkEvent.Planned;
import rinsebell.floor.visit.WorkEvent.PutOn;
import rinsebell.floor.visit.WorkEvent.TakenOff;
import rinsebell.floor.visit.WorkEvent.TowelDried;

/** What is done to a head. */
final class WorkEventKinds {

    static final List<EventKind<?>> ALL = List.of(
            EventKind.first(
                    "put-on",
                    PutOn.class,
                    (event, out) -> out.number("bowl", event.bowl().value())
                            .constant("area", event.area())
                            .constant("zone", event.zone())
                            .constant("cover", event.cover())
                            .duration("planned", event.planned()),
                    in -> new PutOn(
                            new BowlId(in.number("bowl")),
                            in.constant("area", Area.class),
                            in.constant("zone", Zone.class),
                            in.constant("cover", Cover.class),
                            in.maybeDuration("planned").orElse(null))),
            EventKind.first(
                    "last-on",
                    LastOn.class,
                    (event, out) -> write(event.application(), out),
                    in -> new LastOn(application(in))),
            EventKind.first(
                    "cover-changed",
                    CoverChanged.class,
                    (event, out) -> write(event.application(), out).constant("cover", event.cover()),
                    in -> new CoverChanged(application(in), in.constant("cover", Cover.class))),
            EventKind.first(
                    "planned",
                    Planned.class,
                    (event, out) -> write(event.application(), out).duration("time", event.time()),
                    in -> new Planned(application(in), in.maybeDuration("time").orElse(null))),
            EventKind.first(
                    "heat-on",
                    HeatOn.class,
                    (event, out) -> out.constant("heat", event.heat()),
                    in -> new HeatOn(in.constant("heat", Heat.class))),
            EventKind.bare("heat-off", HeatOff.class, HeatOff::new),
            EventKind.first(
                    "foils-out",
                    FoilsOut.class,
                    (event, out) -> write(event.application(), out),
                    in -> new FoilsOut(application(in))),
            EventKind.first(
                    "emulsified",
                    Emulsified.class,
                    (event, out) -> write(event.application(), out),
                    in -> new Emulsified(application(in))),
            EventKind.first(
                    "taken-off",
                    TakenOff.class,
                    (event, out) -> out.numbers("applications", values(event.applications()))
                            .constant("how", event.how()),
                    in -> new TakenOff(applications(in.numbers("applications")), in.constant("how", Ending.How.class))),
            EventKind.bare("towel-dried", TowelDried.class, TowelDried::new));

    private WorkEventKinds() {}

    static Writing write(ApplicationId application, Writing out) {
        return out.number("application", application.value());
    }

    static ApplicationId application(Reading in) {
        return new ApplicationId(in.number("application"));
    }

    private static List<Long> values(Collection<ApplicationId> applications) {
        return applications.stream().map(ApplicationId::value).toList();
    }

    private static Set<ApplicationId> applications(Collection<Long> values) {
        return values.stream().map(ApplicationId::new).collect(Collectors.toUnmodifiableSet());
    }
}
