package rinsebell.db.codec;

import java.time.DateTimeException;
import java.time.LocalDate;
import rinsebell.floor.Stream;
import rinsebell.floor.visit.VisitId;

/** The name of a stream: {@code salon}, {@code day 2026-11-28}, {@code visit 17}. */
public final class StreamName {

    private static final String SALON = "salon";
    private static final String DAY = "day ";
    private static final String VISIT = "visit ";

    private StreamName() {}

    public static String of(Stream stream) {
        if (stream instanceof Stream.OfDay day) {
            return DAY + day.date();
        }
        return stream instanceof Stream.OfVisit of ? VISIT + of.visit().value() : SALON;
    }

    /** @throws UnreadableFact if it names no stream */
    public static Stream parse(String name) {
        try {
            return parsed(name);
        } catch (DateTimeException | NumberFormatException e) {
            throw new UnreadableFact("no such stream: \"" + name + "\"", e);
        }
    }

    private static Stream parsed(String name) {
        if (name.startsWith(DAY)) {
            return Stream.day(LocalDate.parse(name.substring(DAY.length())));
        }
        if (name.startsWith(VISIT)) {
            return Stream.visit(new VisitId(Long.parseLong(name.substring(VISIT.length()))));
        }
        if (name.equals(SALON)) {
            return Stream.SALON;
        }
        throw new UnreadableFact("no such stream: \"" + name + "\"");
    }
}
