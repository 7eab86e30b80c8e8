package rinsebell.floor.simulation;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rinsebell.floor.Correction;
import rinsebell.floor.Draft;
import rinsebell.floor.Event;
import rinsebell.floor.Stream;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.DayEvent.RecipeFilled;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.LookEvent.Complained;
import rinsebell.floor.visit.LookEvent.LiftJudged;
import rinsebell.floor.visit.LookEvent.RoundsStopped;
import rinsebell.floor.visit.LookEvent.ScalpChecked;
import rinsebell.floor.visit.LookEvent.StrandChecked;
import rinsebell.floor.visit.StayEvent.ClientLinked;
import rinsebell.floor.visit.StayEvent.GateAnswered;
import rinsebell.floor.visit.StayEvent.HandedOver;
import rinsebell.floor.visit.StayEvent.Left;
import rinsebell.floor.visit.WorkEvent.CoverChanged;
import rinsebell.floor.visit.WorkEvent.HeatOff;
import rinsebell.floor.visit.WorkEvent.HeatOn;
import rinsebell.floor.visit.WorkEvent.LastOn;
import rinsebell.floor.visit.WorkEvent.Planned;
import rinsebell.floor.visit.WorkEvent.PutOn;
import rinsebell.floor.visit.WorkEvent.TakenOff;

/** Which events may end a bell that rings, or make it ring less: nothing else may. */
final class Endings {
    private static final Set<Class<? extends Event>> OFF = Set.of(TakenOff.class, Left.class, RecipeFilled.class);

    private static final Map<BellKind, Set<Class<? extends Event>>> BY = Map.ofEntries(
            Map.entry(
                    BellKind.BOWL_WAITING,
                    Set.of(PutOn.class, DayEvent.Divided.class, DayEvent.ThrownAway.class, RecipeFilled.class)),
            Map.entry(
                    BellKind.STRAND_CHECK,
                    Set.of(
                            StrandChecked.class,
                            ScalpChecked.class,
                            PutOn.class,
                            LastOn.class,
                            Planned.class,
                            HeatOn.class,
                            HeatOff.class,
                            HandedOver.class,
                            Complained.class)),
            Map.entry(
                    BellKind.SCALP_CHECK,
                    Set.of(
                            StrandChecked.class,
                            ScalpChecked.class,
                            PutOn.class,
                            LastOn.class,
                            Planned.class,
                            HeatOn.class,
                            HeatOff.class,
                            HandedOver.class,
                            Complained.class)),
            Map.entry(BellKind.LAST_ON_MISSING, Set.of(LastOn.class, PutOn.class)),
            Map.entry(
                    BellKind.READY,
                    Set.of(
                            StrandChecked.class,
                            ScalpChecked.class,
                            PutOn.class,
                            LastOn.class,
                            Planned.class,
                            HeatOn.class,
                            HeatOff.class,
                            Complained.class)),
            Map.entry(BellKind.HEAT_END, Set.of(HeatOff.class, HeatOn.class)),
            Map.entry(BellKind.COVER_END, Set.of(CoverChanged.class, PutOn.class)),
            Map.entry(BellKind.FORBIDDEN_HEAT, Set.of(HeatOff.class, HeatOn.class)),
            Map.entry(BellKind.FORBIDDEN_COVER, Set.of(CoverChanged.class, PutOn.class)),
            Map.entry(BellKind.FORBIDDEN_ZONE, Set.of(ClientLinked.class)),
            Map.entry(BellKind.FORBIDDEN_MIXTURE, Set.of()),
            Map.entry(BellKind.PASSED_GATE, Set.of(GateAnswered.class)),
            Map.entry(BellKind.GATE_OPEN, Set.of(GateAnswered.class)),
            Map.entry(
                    BellKind.RINSE,
                    Set.of(
                            StrandChecked.class,
                            ScalpChecked.class,
                            Complained.class,
                            Planned.class,
                            LastOn.class,
                            HeatOn.class,
                            HeatOff.class)),
            Map.entry(BellKind.TINGLING, Set.of(ScalpChecked.class)),
            Map.entry(BellKind.BURNING, Set.of(ScalpChecked.class)),
            Map.entry(BellKind.HOT_FOIL, Set.of(ScalpChecked.class)),
            Map.entry(BellKind.SCALP_AFTER_RINSE, Set.of(ScalpChecked.class)),
            Map.entry(BellKind.ROUND_OVER, Set.of(LiftJudged.class, RoundsStopped.class, PutOn.class)));

    /** Of these the act on another head counts too: a shared basin, a client's other visit. */
    private static final Set<Class<? extends Event>> ACROSS = Set.of(RecipeFilled.class, ClientLinked.class);

    private Endings() {}

    static boolean mayEnd(List<Draft> drafts, Bell bell) {
        return bell.kind() == BellKind.BASINS_CLASH || drafts.stream().anyMatch(draft -> mayEnd(draft, bell));
    }

    private static boolean mayEnd(Draft draft, Bell bell) {
        var event = draft.event();
        if (event instanceof SalonEvent) {
            return true;
        }
        if (event instanceof Correction) {
            return reaches(draft.stream(), bell);
        }
        var ends = OFF.contains(event.getClass())
                || BY.getOrDefault(bell.kind(), Set.of()).contains(event.getClass());
        return ends && (isAbout(draft, bell) || ACROSS.contains(event.getClass()));
    }

    /**
     * A correction on one head leaves the bells of others alone. But what happened to a client's scalp goes with the
     * client, and a bowl is on somebody after all when it was wrong to say that it was not.
     */
    private static boolean reaches(Stream stream, Bell bell) {
        return !(stream instanceof Stream.OfVisit of)
                || of.visit().equals(bell.visit())
                || bell.kind() == BellKind.FORBIDDEN_ZONE
                || bell.kind() == BellKind.BOWL_WAITING;
    }

    private static boolean isAbout(Draft draft, Bell bell) {
        if (bell.kind() == BellKind.BOWL_WAITING) {
            return draft.event().hangsOn().contains(bell.key().subject());
        }
        return draft.stream() instanceof Stream.OfVisit of && of.visit().equals(bell.visit());
    }
}
