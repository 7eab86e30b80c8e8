package rinsebell.floor.basin;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.salon.Shift;
import rinsebell.floor.salon.StaffId;

/** The hands at the basins, from the hours that were entered. */
final class Shifts {
    /** Beyond that nobody plans. */
    private static final int DAYS = 2;

    private Shifts() {}

    /**
     * The hands on the days of what is on the floor, or of an instant.
     *
     * @param from {@link Instant#MIN} for the days of the floor's open visits
     */
    static Hands hands(Floor floor, Instant from) {
        var salon = floor.salon();
        var all = salon.working().stream()
                .map(member -> salon.basinHours().of(member.id()))
                .toList();
        return salon.basinHours().isSaid() ? counted(salon, all, firstDay(floor, from)) : Hands.UNKNOWN;
    }

    /** Whether somebody is at the basins at an instant, by their hours. */
    static boolean covers(Salon salon, StaffId staff, Instant at) {
        var local = at.atZone(salon.zone());
        return salon.basinHours().of(staff).stream()
                .anyMatch(shift -> shift.day() == local.getDayOfWeek()
                        && !local.toLocalTime().isBefore(shift.from())
                        && local.toLocalTime().isBefore(shift.until()));
    }

    private static LocalDate firstDay(Floor floor, Instant from) {
        var salon = floor.salon();
        return from.equals(Instant.MIN)
                ? floor.openVisits().stream()
                        .map(visit -> salon.dayOf(visit.begin()))
                        .min(LocalDate::compareTo)
                        .orElse(LocalDate.EPOCH)
                : salon.dayOf(from);
    }

    private static Hands counted(Salon salon, Collection<List<Shift>> all, LocalDate first) {
        var changes = new TreeMap<Instant, Integer>();
        for (var ahead = 0L; ahead < DAYS; ahead++) {
            var date = first.plusDays(ahead);
            all.stream()
                    .flatMap(List::stream)
                    .filter(shift -> shift.day() == date.getDayOfWeek())
                    .forEach(shift -> {
                        changes.merge(
                                date.atTime(shift.from()).atZone(salon.zone()).toInstant(), 1, Integer::sum);
                        changes.merge(
                                date.atTime(shift.until()).atZone(salon.zone()).toInstant(), -1, Integer::sum);
                    });
        }
        var steps = new ArrayList<Hands.Step>();
        var count = 0;
        for (var change : changes.entrySet()) {
            count += change.getValue();
            steps.add(new Hands.Step(change.getKey(), count));
        }
        return Hands.of(steps);
    }
}
