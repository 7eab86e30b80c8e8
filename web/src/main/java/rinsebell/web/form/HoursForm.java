package rinsebell.web.form;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rinsebell.floor.Command;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Shift;
import rinsebell.floor.salon.StaffId;

/** Reads when somebody is at the basins: a line for each weekday, such as "9:00-13:00, 13:30-18:00". */
final class HoursForm {
    private static final Pattern SPANS = Pattern.compile("[,;]");
    private static final Pattern SPAN = Pattern.compile(
            "(\\d{1,2})(?:[:.](\\d{2}))?\\s*(?:-|–|—|to)\\s*(\\d{1,2})(?:[:.](\\d{2}))?", Pattern.CASE_INSENSITIVE);

    private HoursForm() {}

    static String field(DayOfWeek day) {
        return "hours." + day.name().toLowerCase(Locale.ROOT);
    }

    static Command hours(Entries entries) {
        var shifts = new ArrayList<Shift>();
        for (var day : DayOfWeek.values()) {
            entries.value(field(day)).ifPresent(text -> shifts.addAll(day(entries, day, text)));
        }
        return new Arrange(new SalonEvent.ShiftsSet(new StaffId(entries.id()), shifts), null);
    }

    private static List<Shift> day(Entries entries, DayOfWeek day, String text) {
        var shifts = new ArrayList<Shift>();
        for (var part : SPANS.split(text)) {
            var read = SPAN.matcher(part.trim());
            var from = read.matches() ? time(read.group(1), read.group(2)) : Optional.<LocalTime>empty();
            var until = read.matches() ? time(read.group(3), read.group(4)) : Optional.<LocalTime>empty();
            if (from.isEmpty() || until.isEmpty()) {
                entries.fault(field(day), Fault.NOT_HOURS);
                return List.of();
            }
            if (!from.get().isBefore(until.get()) || isWithin(shifts, from.get())) {
                entries.fault(field(day), Fault.ENDS_BEFORE);
                return List.of();
            }
            shifts.add(new Shift(day, from.get(), until.get()));
        }
        return shifts;
    }

    /** Hours are told in their order. */
    private static boolean isWithin(List<Shift> before, LocalTime from) {
        return before.stream().anyMatch(shift -> from.isBefore(shift.until()));
    }

    /** Midnight as an end is the last minute of the day. */
    private static Optional<LocalTime> time(String hours, @org.jspecify.annotations.Nullable String minutes) {
        var hour = Integer.parseInt(hours);
        var minute = minutes == null ? 0 : Integer.parseInt(minutes);
        if (hour == 24 && minute == 0) {
            return Optional.of(LocalTime.of(23, 59));
        }
        return hour < 24 && minute < 60 ? Optional.of(LocalTime.of(hour, minute)) : Optional.empty();
    }

    /** As it is typed. */
    static String written(List<Shift> shifts, DayOfWeek day) {
        return shifts.stream()
                .filter(shift -> shift.day() == day)
                .map(shift -> shift.from() + "-" + shift.until())
                .collect(Collectors.joining(", "));
    }
}
