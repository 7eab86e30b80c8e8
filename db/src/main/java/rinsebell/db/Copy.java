package rinsebell.db;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rinsebell.floor.salon.Policy.Keeping;

/**
 * A copy of the tables in a file of its own, which is named after the instant in UTC at which it was made and after the
 * number of facts in it. Facts only become more, so their number tells which of two copies is newer even when the clock
 * was set between them.
 */
record Copy(Path file, Instant at, long facts) {

    /** How many are kept of those made last, and for how long any is kept. */
    static final int LAST_KEPT = 24;

    static final Duration OLDEST_KEPT = Keeping.COPIES;

    /** One that seems to come from later than this was made while the clock was wrong. */
    private static final Duration CLOCK_MAY_DIFFER = Duration.ofDays(1);

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final Pattern NAME = Pattern.compile("(\\d{8}T\\d{6}Z)-(\\d{1,18})\\.sql\\.gz");

    static Copy named(Path folder, Instant at, long facts) {
        return new Copy(folder.resolve(TIME.format(at) + "-" + facts + ".sql.gz"), at, facts);
    }

    /** The copies in a folder, newest first; other files are left alone, and the folder need not be there. */
    static List<Copy> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.flatMap(Copy::named)
                    .sorted(Comparator.comparingLong(Copy::facts)
                            .thenComparing(Copy::at)
                            .reversed())
                    .toList();
        }
    }

    private static Stream<Copy> named(Path file) {
        Matcher name = NAME.matcher(file.getFileName().toString());
        try {
            return name.matches()
                    ? Stream.of(new Copy(file, TIME.parse(name.group(1), Instant::from), Long.parseLong(name.group(2))))
                    : Stream.empty();
        } catch (DateTimeParseException e) {
            return Stream.empty();
        }
    }

    /**
     * Those that are kept no longer: what is neither one of the last nor the last of its day, and whatever is too old,
     * since what was erased must not live for ever in a copy.
     */
    static List<Copy> expired(List<Copy> newestFirst, Instant now) {
        Set<LocalDate> days = new HashSet<>();
        List<Copy> expired = new ArrayList<>();
        for (int at = 0; at < newestFirst.size(); at++) {
            Copy copy = newestFirst.get(at);
            boolean lastOfDay = days.add(copy.day()) && copy.at().isBefore(now.plus(CLOCK_MAY_DIFFER));
            boolean tooOld = copy.at().isBefore(now.minus(OLDEST_KEPT));
            if (tooOld || (at >= LAST_KEPT && !lastOfDay)) {
                expired.add(copy);
            }
        }
        return expired;
    }

    private LocalDate day() {
        return LocalDate.ofInstant(at, ZoneOffset.UTC);
    }
}
