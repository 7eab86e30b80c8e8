package rinsebell.app.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.LookEvent;

/**
 * Burning, swelling or a hot foil that could not be saved. It rings all the same, at once: whoever reads "not saved"
 * on one tablet must not be the only one who knows. Such a fact has a number below zero, which none on disk has.
 */
final class Alarms {
    private Alarms() {}

    /** The alarms among presses of which nothing could be saved. */
    static List<Fact> among(List<Ledger.Entry> lost) {
        return lost.stream()
                .flatMap(entry -> entry.facts().stream())
                .filter(Alarms::isAlarm)
                .toList();
    }

    static boolean isAlarm(Fact fact) {
        return fact.event() instanceof LookEvent.Complained complained
                && complained.grade().isOffAtOnce();
    }

    static List<Fact> together(List<Fact> alarms, List<Fact> more) {
        var all = new ArrayList<>(alarms);
        for (var fact : more) {
            if (all.stream().noneMatch(known -> isSame(known, fact))) {
                all.add(new Fact(
                        number(fact, all), fact.stream(), fact.happened(), fact.recorded(), fact.by(), fact.event()));
            }
        }
        return all;
    }

    /** That somebody has heard it is a fact, so no later alarm may have its number, after a restart neither. */
    private static long number(Fact fact, List<Fact> taken) {
        var lowest = taken.stream().mapToLong(Fact::seq).min().orElse(0);
        return Math.min(lowest - 1, -fact.recorded().toEpochMilli());
    }

    /** The same alarms after the clock was put right. */
    static List<Fact> moved(List<Fact> alarms, Duration by) {
        return alarms.stream()
                .map(fact -> new Fact(
                        fact.seq(),
                        fact.stream(),
                        fact.happened().plus(by),
                        fact.recorded().plus(by),
                        fact.by(),
                        fact.event()))
                .toList();
    }

    /** Those that still ring: neither ended by what was recorded since, nor saved by a later try. */
    static List<Fact> left(List<Fact> alarms, Floor floor, List<Bell> bells) {
        return alarms.stream()
                .filter(alarm -> bells.stream().anyMatch(bell -> bell.key().anchor() == alarm.seq()))
                .filter(alarm -> floor.standing(alarm.stream()).stream()
                        .noneMatch(saved ->
                                isSame(alarm, saved) && !saved.happened().isBefore(alarm.happened())))
                .toList();
    }

    private static boolean isSame(Fact one, Fact other) {
        return one.stream().equals(other.stream()) && grade(one) != null && grade(one) == grade(other);
    }

    private static Complaint.@Nullable Grade grade(Fact fact) {
        return fact.event() instanceof LookEvent.Complained complained ? complained.grade() : null;
    }
}
